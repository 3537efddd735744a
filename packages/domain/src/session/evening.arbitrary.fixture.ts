import fc from 'fast-check'
import { PRESSURES } from '../curriculum'
import { FORMAT_IDS } from '../formats'
import { FINDINGS, type Finding, MARKINGS, type Marking, type Space } from '../pitch'
import { millimetres } from '../quantities'
import type { Equipment, SquadMember } from './kit'
import { kit, kitDate, modelSession, squad, stage, turnout, versionContent } from './kit.fixture'
import type { EveningFacts } from './plan-evening'

// Random evenings inside the range a plan promises to serve.

const POSITIONS = ['GK', 'LCB', 'RCB', 'LW', 'CM', 'RW', 'ST', null] as const

const finding = fc.constantFrom<Finding>(...FINDINGS)

function markings(): fc.Arbitrary<Readonly<Record<Marking, Finding>>> {
  return fc.tuple(...MARKINGS.map(() => finding)).map((found) => {
    return Object.fromEntries(MARKINGS.map((marking, index) => [marking, found[index]])) as Record<Marking, Finding>
  })
}

/** 15 to 70 metres each way in whole millimetres, so half of them wider than long, with or without lines and goals. */
export function spaces(): fc.Arbitrary<Space> {
  const side = fc.integer({ min: 15_000, max: 70_000 }).map(millimetres)
  const goals = fc.constantFrom<Space['goals']>(
    [],
    [{ end: 'own', widthMm: millimetres(5486), movable: false }],
    [{ end: 'far', widthMm: millimetres(4880), movable: true }],
  )
  return fc.record({
    name: fc.constant('Space'),
    venue: fc.constant('Venue'),
    lengthMm: side,
    widthMm: side,
    covers: fc.constantFrom('whole', 'half', 'plain'),
    formatId: fc.constantFrom(...FORMAT_IDS),
    markings: markings(),
    goals,
  })
}

function equipment(): fc.Arbitrary<Equipment> {
  const some = fc.integer({ min: 0, max: 30 })
  return fc.record({ cone: some, pole: some, 'small-goal': fc.integer({ min: 0, max: 4 }), ball: some, bib: some })
}

function members(count: number): fc.Arbitrary<readonly SquadMember[]> {
  const changed = fc.record({
    home: fc.constantFrom(...POSITIONS),
    stretch: fc.constantFrom(...POSITIONS),
    goalkeeper: fc.constantFrom<SquadMember['goalkeeper']>('yes', 'sometimes', 'no'),
    past: fc.record({ blocks: fc.nat(12), left: fc.nat(6), right: fc.nat(6) }),
  })
  return fc
    .array(changed, { minLength: count, maxLength: count })
    .map((changes) => squad(count).map((member, index) => ({ ...member, ...changes[index] })))
}

function adopted() {
  const stages = fc.record({
    pressure: fc.constantFrom(...PRESSURES),
    form: fc.constantFrom({ kind: 'full' } as const, { kind: 'first-steps', steps: 2 } as const),
  })
  const content = fc.tuple(stages, fc.boolean()).map(([{ pressure, form }, hasModel]) => {
    const progressions = [{ progressionId: 'g1', title: 'G', stages: [stage('only', pressure, form)], after: [] }]
    return versionContent({ progressions, modelSessions: hasModel ? [modelSession()] : [] })
  })
  return fc.option(content.map((each) => ({ curriculumId: 'c1', number: 1, contentHash: '', content: each })))
}

/** 4 to 24 children with guests among them, some more who sit out, one adult or two, 45 to 90 minutes, any bag. */
export function evenings(): fc.Arbitrary<EveningFacts> {
  const counts = fc.record({
    squad: fc.integer({ min: 4, max: 22 }),
    guests: fc.integer({ min: 0, max: 2 }),
    out: fc.nat(2),
  })
  return counts.chain((count) =>
    fc
      .record({
        team: members(count.squad + count.out),
        space: spaces(),
        adults: fc.integer({ min: 1, max: 2 }),
        slot: fc.integer({ min: 45, max: 90 }),
        bag: equipment(),
        version: adopted(),
        ageGroup: fc.constantFrom('U8', 'U10', 'U12'),
        paceMm: fc.integer({ min: 600, max: 1000 }).map(millimetres),
      })
      .map(({ team, space, adults, slot, bag, version, ageGroup, paceMm }): EveningFacts => {
        const base = kit({ squad: team, equipment: bag, adopted: version })
        const here = team.map((member) => member.playerId)
        const sitsOut = team.slice(count.squad).map((member) => member.playerId)
        return {
          kit: { ...base, team: { ...base.team, ageGroup } },
          date: kitDate(slot),
          turnout: turnout(here, { sitsOut, guests: ['AB', 'AB'].slice(0, count.guests), adults }),
          space,
          paceMm,
        }
      }),
  )
}
