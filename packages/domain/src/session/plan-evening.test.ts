import { describe, expect, test } from 'vitest'
import { millimetres, minutes } from '../quantities'
import {
  evening,
  halfPitch,
  kit,
  kitDate,
  modelSession,
  plainSpace,
  squad,
  stage,
  turnout,
  versionContent,
} from './kit.fixture'
import { type EveningFacts, planEvening } from './plan-evening'

function kitWithStage(pressure: Parameters<typeof stage>[1], children = 16): EveningFacts['kit'] {
  const progressions = [{ progressionId: 'g1', title: 'G', stages: [stage('only', pressure)], after: [] }]
  const content = versionContent({ progressions })
  return kit({ squad: squad(children), adopted: { curriculumId: 'c1', number: 1, contentHash: '', content } })
}

function sentences(facts: EveningFacts): string {
  return planEvening(facts)
    .notes.map((note) => note.sentence)
    .join('\n')
}

function patternOf(facts: EveningFacts) {
  return planEvening(facts).activities.find((activity) => activity.kind === 'pattern')
}

describe('odd turnouts', () => {
  test('five who came for a stage that needs more play games only, and the note says why', () => {
    const content = versionContent({
      progressions: [{ progressionId: 'g1', title: 'G', stages: [stage('s', 'none')], after: [] }],
    })
    const needsAll = {
      ...content,
      patterns: content.patterns.map((pattern) => ({ ...pattern, document: allRun(pattern.document) })),
    }
    const adopted = { curriculumId: 'c1', number: 1, contentHash: '', content: needsAll }
    const plan = planEvening(evening(5, { kit: kit({ adopted }) }))
    expect(plan.kind).toBe('games-only')
    expect(plan.stage).toBeNull()
    expect(plan.activities.every((activity) => activity.kind !== 'pattern')).toBe(true)
    const note = plan.notes.find((each) => each.code === 'games-only')
    expect(note?.sentence).toBe('Third man, s needs 6 and a goalkeeper; 5 came. Games only tonight.')
  })

  test('eight with one defender play seven positions and one X, everybody in games of four against four', () => {
    const facts = evening(8, { kit: kitWithStage('x1') })
    const plan = planEvening(facts)
    expect(plan.kind).toBe('full')
    expect(plan.activities[0]?.detail).toBe('4v4')
    const pattern = patternOf(facts)
    expect(pattern?.opponents).toBe(1)
    for (const block of pattern?.lineups?.blocks ?? []) {
      expect(block.places).toHaveLength(7)
      expect(block.off).toHaveLength(1)
    }
    expect(plan.longestWaitSeconds).toBe(0)
  })

  test('thirteen and two guests with the same initials: fifteen different children, two games, one plus player', () => {
    const members = squad(13)
    const here = members.map((member) => member.playerId)
    const facts = evening(13, { turnout: turnout(here, { guests: ['AB', 'AB'], adults: 2 }) })
    const plan = planEvening(facts)
    expect(plan.children).toHaveLength(15)
    expect(plan.children.filter((id) => id.startsWith('guest:'))).toEqual(['guest:AB', 'guest:AB-2'])
    expect(plan.activities[0]?.groups.map((group) => [group.area, group.role, group.children.length])).toEqual([
      [0, 'team', 4],
      [0, 'team', 4],
      [1, 'team', 3],
      [1, 'team', 3],
      [1, 'plus', 1],
    ])
  })

  test('a child who sits out is named by the plan and plays in nothing', () => {
    const here = squad(9).map((member) => member.playerId)
    const plan = planEvening(evening(9, { turnout: turnout(here, { sitsOut: ['c03'] }) }))
    expect(plan.children).toHaveLength(8)
    expect(plan.sitsOut).toEqual(['c03'])
    expect(JSON.stringify(plan.activities)).not.toContain('c03')
    expect(plan.notes.some((note) => note.code === 'sits-out')).toBe(true)
  })

  test.each([0, 1, 2, 3])('%i children are too few, and the plan says what does not fit', (count) => {
    const plan = planEvening(evening(count))
    expect(plan.notes[0]?.code).toBe('too-few-children')
    expect([...plan.activities, ...plan.pauses].reduce((sum, part) => sum + part.minutes, 0)).toBe(75)
    expect(plan.activities.flatMap((activity) => activity.groups.map((group) => group.children.length))).not.toContain(
      0,
    )
  })

  test('thirty children, or half an hour, still get a plan that says it is out of range', () => {
    expect(sentences(evening(30))).toContain('30 came')
    expect(sentences(evening(8, { date: kitDate(30) }))).toContain('30 minutes')
  })
})

/** Everybody but the goalkeeper runs in the last step, so that the pattern needs all seven. */
function allRun(document: ReturnType<typeof versionContent>['patterns'][number]['document']): typeof document {
  const runs = document.positions
    .filter((placed) => placed.position !== 'GK')
    .map((placed) => ({ position: placed.position, to: placed.spot, start: 'with-the-ball' as const }))
  return { ...document, steps: document.steps.map((step, index) => (index === 0 ? { ...step, runs } : step)) }
}

describe('the stage', () => {
  test('defenders the children cannot spare are said, and an adult walks as the defender where none is left', () => {
    expect(sentences(evening(8, { kit: kitWithStage('x2') }))).not.toContain('defenders are written')
    expect(sentences(evening(8, { kit: kitWithStage('x3') }))).toContain('3 defenders are written; 2 are free.')
    const needsAll = kitWithStage('x1')
    const content = needsAll.adopted!.content
    const adopted = {
      ...needsAll.adopted!,
      content: { ...content, patterns: content.patterns.map((each) => ({ ...each, document: allRun(each.document) })) },
    }
    expect(sentences(evening(7, { kit: { ...needsAll, adopted } }))).toContain('walk as the defender yourself')
  })

  test('without a version the evening is games by the habit of the age, a game first', () => {
    const plan = planEvening(evening(8, { kit: kit({ adopted: null }) }))
    expect(plan.kind).toBe('games-only')
    expect(plan.activities[0]?.kind).toBe('small-sided-game')
    expect(plan.notes.some((note) => note.code === 'no-version')).toBe(true)
  })

  test('by habit the theme of a U10 evening keeps to 15 to 25 minutes and two fifths of the ball time, games to half', () => {
    const content = versionContent({ modelSessions: [] })
    for (let slot = 60; slot <= 90; slot += 5) {
      for (const adults of [1, 2]) {
        const adopted = { curriculumId: 'c1', number: 1, contentHash: '', content }
        const facts = evening(10, { kit: kit({ adopted }), date: kitDate(slot) })
        const plan = planEvening({ ...facts, turnout: { ...facts.turnout, adults } })
        const theme = plan.activities.find((activity) => activity.kind === 'pattern')?.minutes ?? 0
        const playing = plan.activities.reduce((sum, activity) => sum + activity.minutes, 0)
        expect(theme).toBeGreaterThanOrEqual(15)
        expect(theme).toBeLessThanOrEqual(25)
        expect(theme * 1000).toBeLessThanOrEqual(playing * 400)
        expect(plan.gameSharePermille).toBeGreaterThanOrEqual(500)
      }
    }
  })

  test('one adult alone runs three of a U10 model session’s four activities, and the fourth is named', () => {
    const plan = planEvening(evening(10))
    expect(plan.activities.map((activity) => activity.activityId)).toEqual(['a1', 'a3', 'a4'])
    expect(plan.notes.find((note) => note.code === 'adults-short')?.sentence).toContain('Rondo')
  })

  test('a stage the model session names is trained even when another is next', () => {
    const content = versionContent({ modelSessions: [modelSession('one-defender')] })
    const adopted = { curriculumId: 'c1', number: 1, contentHash: '', content }
    expect(planEvening(evening(9, { kit: kit({ adopted }) })).stage).toEqual({
      stageId: 'one-defender',
      reason: 'named-by-model',
      kind: 'club',
    })
  })

  test('rounds come in blocks of at least four with one line-up, the same number on each side', () => {
    const pattern = patternOf(evening(10))
    const sides = pattern?.lineups?.blocks.map((block) => block.side) ?? []
    expect(pattern?.roundsABlock).toBeGreaterThanOrEqual(4)
    expect(sides.filter((side) => side === 'left')).toHaveLength(sides.length / 2)
    expect((pattern?.roundsABlock ?? 0) * sides.length * 60).toBeLessThanOrEqual((pattern?.minutes ?? 0) * 60)
  })
})

describe('line-ups and waiting', () => {
  test('nobody is sent in goal who did not say yes: the adult rolls the ball in', () => {
    const unwilling = squad(8).map((member) => ({ ...member, goalkeeper: 'no' as const }))
    const facts = evening(8, { kit: { ...kitWithStage('none'), squad: unwilling } })
    expect(patternOf(facts)?.lineups?.blocks[0]?.places.map((place) => place.position)).not.toContain('GK')
    expect(sentences(facts)).toContain('Nobody has said yes to goal')
  })

  test('a squad where all are strikers still plays, and the positions that lacked players are named', () => {
    const strikers = squad(8).map((member) => ({ ...member, home: 'ST', stretch: 'RW' }))
    const facts = evening(8, { kit: { ...kitWithStage('none'), squad: strikers } })
    expect(patternOf(facts)?.lineups).not.toBeNull()
    expect(sentences(facts)).toMatch(/lacks? players by home and stretch/)
  })

  test('where children would wait a whole block, line-ups take turns round by round', () => {
    const facts = evening(12, { kit: kitWithStage('none'), space: plainSpace(40, 60) })
    expect(patternOf(facts)?.takeTurns).toBe(2)
    expect(planEvening(facts).longestWaitSeconds).toBe(60)
  })

  test('a wait that is too long even so is said; a second adult keeps those next in playing beside', () => {
    const alone = evening(22, { kit: kitWithStage('none', 22), space: plainSpace(40, 60) })
    const plan = planEvening(alone)
    expect(plan.longestWaitSeconds).toBeGreaterThan(60)
    expect(sentences(alone)).toContain(
      `A child can wait ${plan.longestWaitSeconds} seconds; at this age 60 is the wish.`,
    )
    const helped = planEvening({ ...alone, turnout: { ...alone.turnout, adults: 2 } })
    expect(helped.longestWaitSeconds).toBe(0)
    const pattern = helped.activities.find((activity) => activity.kind === 'pattern')
    expect(pattern?.besideArea).toBe(1)
    expect(pattern?.areas).toHaveLength(2)
  })
})

describe('the ground', () => {
  test('in a space wider than long games lie across it', () => {
    const across = planEvening(evening(8, { space: plainSpace(24, 40) })).activities[0]?.areas[0]
    const along = planEvening(evening(8, { space: plainSpace(40, 24) })).activities[0]?.areas[0]
    expect(across!.widthMm).toBeGreaterThan(across!.lengthMm)
    expect(along!.lengthMm).toBeGreaterThan(along!.widthMm)
  })

  test('a start outside the space is cut at a gate, said in a note, and its position leaves the line-ups', () => {
    const facts = evening(8, { kit: kitWithStage('none'), space: plainSpace(20, 40) })
    expect(sentences(facts)).toContain('ST and the target lie outside this space')
    expect(patternOf(facts)?.lineups?.blocks[0]?.places.map((place) => place.position)).not.toContain('ST')
  })

  test('a cone that two activities share is set out once and serves both', () => {
    const plan = planEvening(evening(8))
    const shared = plan.setOut.filter((stop) => stop.activityIds.length === 2)
    expect(shared.filter((stop) => stop.item === 'cone')).toHaveLength(4)
    expect(shared.filter((stop) => stop.item === 'small-goal')).toHaveLength(2)
  })

  test('on a plain space the bag is the first stop and the middle of the goal; on a marked one it lies on a landmark', () => {
    const plain = planEvening(evening(8, { space: plainSpace(30, 40) })).setOut[0]
    expect(plain).toMatchObject({ number: 0, item: 'bag', from: 'bag', upMm: 0, rightMm: 0 })
    const marked = planEvening(evening(8, { space: halfPitch() })).setOut[0]
    expect(marked?.from).not.toBe('bag')
  })

  test('with nine cones the plan counts what stands in and what is short even so', () => {
    const bag = { cone: 9, pole: 0, 'small-goal': 2, ball: 1, bib: 6 }
    const plan = planEvening(evening(8, { kit: kit({ equipment: bag }) }))
    expect(plan.equipmentShort.cone).toBe(plan.equipmentNeeded.cone - 9)
    expect(plan.substitutes.map(({ item, instead }) => `${instead} for ${item}`)).toEqual([
      'cone for small-goal',
      'cone for pole',
      'bib for cone',
    ])
    expect(plan.setOut.filter((stop) => stop.item === 'pole').every((stop) => stop.instead === 'cone')).toBe(true)
    expect(plan.notes.map((note) => note.code)).toEqual(expect.arrayContaining(['equipment-short', 'wish-balls']))
  })
})

test('equal facts give the same bytes', () => {
  expect(JSON.stringify(planEvening(evening(13)))).toBe(JSON.stringify(planEvening(evening(13))))
})

test('a longer pace gives fewer paces to the same places', () => {
  const short = planEvening(evening(8, { paceMm: millimetres(600) }))
  const long = planEvening(evening(8, { paceMm: millimetres(1000) }))
  expect(long.setOutPaces).toBeLessThan(short.setOutPaces)
  expect(long.setOut.map((stop) => stop.upMm)).toEqual(short.setOut.map((stop) => stop.upMm))
  expect(long.totalMinutes).toBe(minutes(75))
})
