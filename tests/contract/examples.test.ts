import { adoptionBody, curriculumBody, publishBody } from '@espalier/contract/curricula'
import { type ExampleName, examples } from '@espalier/contract/examples'
import { paths, pathTo } from '@espalier/contract/paths'
import { patternCheck, patternCheckBody } from '@espalier/contract/pattern-checks'
import { patternBody } from '@espalier/contract/patterns'
import { personBody } from '@espalier/contract/people'
import {
  equipmentBody,
  limitsEdit,
  reachBody,
  seasonBody,
  slotBody,
  spaceBody,
  teamBody,
} from '@espalier/contract/places'
import { operation } from '@espalier/contract/records'
import { signInLinkBody } from '@espalier/contract/sign-in'
import { squadImportBody } from '@espalier/contract/squads'
import { describe, expect, test } from 'vitest'
import * as z from 'zod/mini'
import { wallOnTheRight } from '../../prisma/demo/patterns'
import { testApi } from '../factories/api'
import { addMember, expectStatus, makeClub } from '../factories/club'

const SHAPES = {
  limits: limitsEdit,
  season: seasonBody,
  team: teamBody,
  space: spaceBody,
  slot: slotBody,
  reach: reachBody,
  equipment: equipmentBody,
  person: personBody,
  signInLink: signInLinkBody,
  squadImport: squadImportBody,
  pattern: patternBody,
  patternCheck: patternCheckBody,
  curriculum: curriculumBody,
  publication: publishBody,
  adoption: adoptionBody,
  attendance: operation,
  report: operation,
} satisfies Record<ExampleName, z.ZodMiniType>

const names = Object.keys(examples) as ExampleName[]

describe('each example', () => {
  test.each(names)('%s holds to its shape, and not with one field more', (name) => {
    expect(z.safeParse(SHAPES[name], examples[name]).error).toBeUndefined()
    expect(z.safeParse(SHAPES[name], { ...examples[name], more: 1 }).success).toBe(false)
  })
})

test('the examples, sent one after the other, set up a club and report an evening', async () => {
  const api = await testApi()
  const club = await makeClub(api)
  const { clubId, administrator } = club
  const teamId = examples.team.id
  const used = new Set<ExampleName>()
  const use = <Name extends ExampleName>(name: Name): (typeof examples)[Name] => {
    used.add(name)
    return examples[name]
  }
  const director = await addMember(club, [{ role: 'director', teamId: null }])
  for (const [path, name] of [
    [pathTo(paths.seasons, { clubId }), 'season'],
    [pathTo(paths.teams, { clubId }), 'team'],
    [pathTo(paths.spaces, { clubId }), 'space'],
    [pathTo(paths.slots, { clubId, teamId }), 'slot'],
    [pathTo(paths.equipment, { clubId }), 'equipment'],
    [pathTo(paths.people, { clubId }), 'person'],
    [pathTo(paths.signInLinks, { clubId, memberId: examples.person.id }), 'signInLink'],
    [pathTo(paths.squadImports, { clubId, teamId }), 'squadImport'],
  ] as const) {
    // Of these only a counting says what it was made from.
    const answer = await administrator.send('POST', path, use(name), name === 'equipment' ? { fromVersion: 0 } : {})
    expect([name, answer.status]).toEqual([name, name === 'equipment' ? 200 : 201])
  }
  const settings = pathTo(paths.settings, { clubId })
  expectStatus(await director.person.send('PUT', settings, use('limits'), { fromVersion: 1 }), 200)
  expectStatus(await director.person.send('POST', pathTo(paths.patterns, { clubId }), use('pattern')), 201)
  const checked = expectStatus(await director.person.send('POST', paths.patternChecks, use('patternCheck')), 200)
  expect(z.safeParse(patternCheck, checked.json).error).toBeUndefined()
  expectStatus(await director.person.send('POST', pathTo(paths.curricula, { clubId }), use('curriculum')), 201)
  const { id: curriculumId } = examples.curriculum
  const versions = pathTo(paths.versions, { clubId, curriculumId })
  const early = await director.person.send('POST', versions, use('publication'), { fromVersion: 1 })
  expect(early.json.code).toBe('teaching-missing')
  const finished = { document: { ...wallOnTheRight, title: examples.pattern.document.title } }
  const patternPath = pathTo(paths.pattern, { clubId, patternId: examples.pattern.id })
  expectStatus(await director.person.send('PUT', patternPath, finished, { fromVersion: 1 }), 200)
  expectStatus(await director.person.send('POST', versions, use('publication'), { fromVersion: 1 }), 201)
  expectStatus(await director.person.send('POST', pathTo(paths.adoptions, { clubId, teamId }), use('adoption')), 201)

  const coach = await addMember(club, [{ role: 'coach', teamId }])
  expectStatus(
    await coach.person.send('PUT', pathTo(paths.reach, { clubId, teamId }), use('reach'), { fromVersion: 0 }),
    200,
  )
  const { dates } = (await coach.person.get(pathTo(paths.dates, { clubId, teamId }))).json
  const at = <Body extends object>(body: Body) => ({ ...body, dateId: dates[0].dateId })
  const [attendance, report] = [use('attendance'), use('report')]
  const operations = [
    { ...attendance, body: at(attendance.body) },
    { ...report, body: at(report.body) },
  ]
  const answer = await coach.person.send('POST', pathTo(paths.operations, { clubId }), { operations })
  expect(answer.json.results.map(({ status }: { status: string }) => status)).toEqual(['applied', 'applied'])
  expect([...used].sort()).toEqual([...names].sort())
})
