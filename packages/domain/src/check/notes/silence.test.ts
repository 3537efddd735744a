import { describe, expect, test } from 'vitest'
import type { PatternDocument, Step } from '../../pattern'
import { opponentAt, passStep, samplePattern, spotAt } from '../../pattern/fixtures/sample-pattern'
import { nominalSpace, spotPoint } from '../../pitch'
import { metres, millimetres } from '../../quantities'
import { type CheckOptions, checkPattern } from '../check-pattern'
import { ASKED_HABITS, type DEFAULT_LIMITS } from '../limits'
import type { CheckNote, NoteCode } from '../note'
import { elevenAtU13, freeKick, heldTooLong, thrownIn } from './fixtures/law-note-cases'
import { against, intoSpace, lofted, moved, play, withSteps } from './fixtures/note-cases'
import { carriedTooNear, hidden, lastLeaves, shortReach, straightUp } from './fixtures/play-note-cases'

function notesOf(document: PatternDocument, options?: CheckOptions): readonly CheckNote[] {
  return checkPattern(document, nominalSpace(document.formatId), options).notes
}

function codesOf(document: PatternDocument, options?: CheckOptions): readonly NoteCode[] {
  return notesOf(document, options).map((note) => note.code)
}

const rolled: Step = play('s1', { kind: 'roll', from: 'GK', to: 'RCB', into: { kind: 'feet' } })
const open = (document: PatternDocument): PatternDocument => ({ ...document, restart: 'open-play', obstacles: [] })

describe('nothing is said of', () => {
  test.each<[string, PatternDocument, NoteCode, CheckOptions?]>([
    ['a ball rolled at once', { ...withSteps(rolled), restart: 'goalkeeper-hands' }, 'goalkeeper-hold-law'],
    [
      'a goalkeeper who kicks it in the end: it may have lain on the ground',
      { ...heldTooLong, steps: [...heldTooLong.steps.slice(0, 3), passStep('s9', 'GK', 'RCB')] },
      'goalkeeper-hold-law',
    ],
    ['walking about with the ball in open play', { ...heldTooLong, restart: 'open-play' }, 'goalkeeper-hold-law'],
    ['a lofted goal kick', { ...withSteps(play('s1', lofted)), restart: 'goal-kick' }, 'punt-law'],
    ['a roll out of the hands', { ...withSteps(rolled), restart: 'goalkeeper-hands' }, 'punt-law'],
    [
      'an opponent at the distance of a free kick, to the millimetre',
      against(freeKick, opponentAt('x1', spotAt('centre-mark', 0, 7.315))),
      'free-kick-law',
    ],
    [
      'an opponent in the area at a free kick outside it',
      against(freeKick, opponentAt('x1', spotAt('penalty-mark'))),
      'free-kick-law',
    ],
    [
      'an opponent at the distance at a free kick in the area, outside the area',
      against(
        moved({ ...freeKick, steps: [passStep('s1', 'GK', 'RCB')] }, 'GK', spotAt('goal-centre', 6)),
        opponentAt('x1', spotAt('penalty-area-top', 3)),
      ),
      'free-kick-law',
    ],
    [
      'an opponent near in open play',
      { ...against(freeKick, opponentAt('x1', spotAt('centre-mark', -3, 4))), restart: 'open-play' },
      'free-kick-law',
    ],
    ['a throw-in from the line', thrownIn, 'throw-in-law'],
    [
      'an opponent two metres from the thrower',
      against(thrownIn, opponentAt('x1', spotAt('build-out-line-right', 0, -2))),
      'throw-in-law',
    ],
    ['a throw from the edge of the area', moved(heldTooLong, 'GK', spotAt('penalty-area-top')), 'hands-law'],
    [
      'a pass within the team’s reach',
      open(moved(withSteps(passStep('s1', 'GK', 'RCB')), 'RCB', spotAt('goal-centre', 3, 10))),
      'beyond-team-reach',
      { teamReach: shortReach },
    ],
    ['a long pass of a team nobody has measured', open(withSteps(passStep('s1', 'GK', 'ST'))), 'beyond-team-reach'],
    [
      'an opponent right in the way of the ball, which the closed lane says',
      against(open(withSteps(passStep('s1', 'GK', 'CM'))), opponentAt('x1', spotAt('penalty-mark', 0, 0.4))),
      'cover-shadow',
    ],
    [
      'an opponent beyond the receiver',
      against(hidden, opponentAt('x1', spotAt('penalty-arc-top', 2, 0))),
      'cover-shadow',
    ],
    [
      'a pole before the receiver',
      { ...hidden, obstacles: [{ ...hidden.obstacles[0]!, kind: 'pole' }] },
      'cover-shadow',
    ],
    ['a ball set back', { ...straightUp, steps: [straightUp.steps[0]!, setBack('s2', 'CM', 'ST')] }, 'out-of-view'],
    [
      'a turn in two touches with room',
      open(withSteps(passStep('s1', 'GK', 'CM'), passStep('s2', 'CM', 'ST'))),
      'out-of-view',
    ],
    ['a ball at once square to the side', moved(straightUp, 'ST', spotAt('penalty-arc-top', 1, 9)), 'out-of-view'],
    [
      'a team-mate three metres away',
      open(moved(withSteps(passStep('s1', 'RCB', 'RW')), 'CM', spotAt('penalty-area-corner-right', 3, -3))),
      'support-distance',
    ],
    [
      'a team-mate who only runs past',
      open(
        moved(
          withSteps(
            { ...passStep('s1', 'GK', 'RCB'), runs: [run('CM', spotAt('halfway-right', 8, -2))] },
            passStep('s2', 'RCB', 'RW'),
          ),
          'CM',
          spotAt('penalty-area-corner-right', -4, -3),
        ),
      ),
      'support-distance',
    ],
    [
      'a carry, however alone',
      open(withSteps(play('s1', { kind: 'carry', by: 'ST', to: spotAt('centre-mark', 20), at: null }))),
      'support-distance',
    ],
    ['a side drawn in part', { ...lastLeaves, positions: lastLeaves.positions.slice(1) }, 'nobody-behind'],
    [
      'a last player who stays',
      { ...lastLeaves, steps: lastLeaves.steps.map((each) => ({ ...each, runs: [] })) },
      'nobody-behind',
    ],
    ['a carry at nobody', { ...carriedTooNear, steps: [carry(5, null)] }, 'carry-release'],
    ['a carry that ends three metres before', { ...carriedTooNear, steps: [carry(3, 'x1')] }, 'carry-release'],
    ['the habits nobody asked for', straightUp, 'striker-straight'],
    [
      'a striker forty-five degrees off',
      moved(straightUp, 'ST', spotAt('penalty-arc-top', 8, 8)),
      'striker-straight',
      { limits: ASKED_HABITS },
    ],
    [
      'a ball from a centre back to the striker: the habit speaks of the midfielder',
      open(withSteps(passStep('s1', 'GK', 'RCB'), passStep('s2', 'RCB', 'ST'))),
      'striker-straight',
      { limits: ASKED_HABITS },
    ],
    [
      'a far winger who comes up to the middle',
      open(
        withSteps(passStep('s1', 'GK', 'RCB'), {
          ...passStep('s2', 'RCB', 'RW'),
          runs: [run('LW', spotAt('centre-mark', 2, 0), 'before-the-ball')],
        }),
      ),
      'weak-side-over',
      { limits: ASKED_HABITS },
    ],
    [
      'how late somebody is for a ball that does not get there',
      open(withSteps(play('s1', highTo('ST')))),
      'receiver-late',
    ],
    ['a lofted ball at U14', { ...elevenAtU13, ageGroup: 'U14' }, 'heading-limit'],
    ['a lofted ball between adults', { ...elevenAtU13, ageGroup: 'adult' }, 'heading-limit'],
    ['a lofted ball where nobody may head at all', { ...elevenAtU13, ageGroup: 'U11' }, 'heading-limit'],
    [
      'a player straight behind the midfielder who is not the striker',
      {
        ...moved(straightUp, 'LW', spotAt('penalty-arc-top', 8)),
        steps: [passStep('s1', 'GK', 'CM'), passStep('s2', 'CM', 'LW')],
      },
      'striker-straight',
      { limits: ASKED_HABITS },
    ],
    [
      'a pole at the distance of a body, to the millimetre',
      {
        ...withSteps(passStep('s1', 'GK', 'CM')),
        obstacles: [{ obstacleId: 'p1', kind: 'pole', spot: spotAt('penalty-mark', 0, 0.5) }],
      },
      'lane-closed',
    ],
  ])('%s', (_, document, code, options) => {
    expect(codesOf(document, options)).not.toContain(code)
  })
})

function highTo(to: string): Step['action'] {
  return { kind: 'pass', from: 'GK', to, into: { kind: 'feet' }, height: 'air', touches: 2, foot: 'either' }
}

function setBack(stepId: string, from: string, to: string): Step {
  return play(stepId, { kind: 'set-back', from, to, into: { kind: 'feet' }, foot: 'either' })
}

function run(
  position: string,
  to: ReturnType<typeof spotAt>,
  start: Step['runs'][number]['start'] = 'with-the-ball',
): Step['runs'][number] {
  return { position, to, start }
}

function carry(up: number, at: string | null): Step {
  return play('s1', { kind: 'carry', by: 'RCB', to: spotAt('build-out-line-right', up, -10), at })
}

describe('on the left as on the right, and in whole or in part', () => {
  test('a far right winger who comes past the middle while the ball is on the left is named, and only that one', () => {
    const document = open(
      withSteps(passStep('s1', 'GK', 'LCB'), {
        ...passStep('s2', 'LCB', 'LW'),
        runs: [run('RW', spotAt('centre-mark', 2, -1), 'before-the-ball')],
      }),
    )
    const notes = notesOf(document, { limits: ASKED_HABITS }).filter((each) => each.code === 'weak-side-over')
    expect(notes).toMatchObject([{ position: 'RW', value: 1 }])
  })

  test('two stay where two are asked: then one is not enough, and the note counts who stays', () => {
    const two = { value: 2, kind: 'club', source: 'the club’s own limit' } as const
    const stays = { ...lastLeaves, steps: lastLeaves.steps.map((each) => ({ ...each, runs: [] })) }
    const notes = notesOf(stays, { limits: { stayBehindPlayers: two } }).filter((each) => each.code === 'nobody-behind')
    expect(notes).toMatchObject([{ value: 1, limit: 2, remedy: null }])
    expect(notes[0]?.sentence).toMatch(/^Only 1 of the outfield players stay/)
  })

  test('a pair too near is named once however often they play', () => {
    const document = open(
      moved(
        withSteps(passStep('s1', 'RCB', 'RW'), passStep('s2', 'RW', 'RCB'), passStep('s3', 'RCB', 'RW')),
        'CM',
        spotAt('penalty-area-corner-right', 2, -3),
      ),
    )
    expect(codesOf(document).filter((code) => code === 'support-distance')).toHaveLength(1)
  })
})

test.each([
  ['goal-kick', [rolled], 'GK may not use the hands here: this restart is kicked.'],
  [
    'goal-kick',
    [passStep('s2', 'GK', 'RCB'), passStep('s3', 'RCB', 'GK'), rolled],
    'GK may not use the hands: a team-mate played the ball back.',
  ],
  [
    'free-kick',
    [play('s0', { kind: 'carry', by: 'GK', to: spotAt('goal-centre', 6), at: null }), rolled],
    'GK may not take up the ball again before somebody else has touched it.',
  ],
] as const)('at a %s the note of the hands says which law: %#', (restart, steps, sentence) => {
  const notes = notesOf({ ...withSteps(...steps), restart })
  expect(notes.filter((each) => each.code === 'hands-law').map((each) => each.sentence)).toEqual([sentence])
})

test('only the taker of a throw-in may stand outside the line: in open play a step outside is off the space', () => {
  const outside = moved(open(withSteps(passStep('s1', 'RW', 'CM'))), 'RW', spotAt('build-out-line-right', 0, 0.8))
  expect(notesOf(outside)).toContainEqual(
    expect.objectContaining({ code: 'off-the-space', position: 'RW', value: 0.8 }),
  )
})

test('two who start in one place are named before the first step though one of them leaves at once', () => {
  const leaves = { ...passStep('s1', 'GK', 'RCB'), runs: [run('LW', spotAt('centre-mark'), 'before-the-ball')] }
  const notes = notesOf(moved(withSteps(leaves), 'LW', spotAt('penalty-arc-top')))
  expect(notes.filter((each) => each.code === 'two-in-one-place')).toMatchObject([{ stepId: null, value: 0 }])
})

describe('a limit is a limit: one more and it is said', () => {
  test.each<[string, PatternDocument, NoteCode, CheckOptions]>([
    ['seconds in the hands', heldTooLong, 'goalkeeper-hold-law', limit('holdSeconds', 17)],
    ['the shadow', hidden, 'cover-shadow', limit('shadowMetres', 0.4)],
    ['the view', straightUp, 'out-of-view', limit('viewDegrees', 180)],
    ['the room to stay behind', lastLeaves, 'nobody-behind', limit('stayBehindShare', 0.55)],
    ['how many stay', lastLeaves, 'nobody-behind', limit('stayBehindPlayers', 0)],
    ['the release', carriedTooNear, 'carry-release', limit('releaseNearMetres', 1)],
  ])('%s', (_, document, code, quiet) => {
    expect(codesOf(document)).toContain(code)
    expect(codesOf(document, quiet)).not.toContain(code)
  })
})

function limit(name: keyof typeof DEFAULT_LIMITS, value: number): CheckOptions {
  return { limits: { [name]: { value, kind: 'club', source: 'the club’s own limit' } } }
}

describe('when opponents may cross the build-out line after a release from the hands', () => {
  const waiting = against(
    { ...withSteps(rolled), restart: 'goalkeeper-hands' },
    opponentAt('x1', spotAt('build-out-line-right', 0.5, -7)),
  )
  const choices = { penaltyMarkYards7v7: 10, buildOutCrossing7v7: 'touched' } as const

  test('they close a lane as soon as it is released, unless the club says a team-mate touches it first', () => {
    expect(codesOf(waiting)).toContain('lane-closed')
    expect(codesOf(waiting, { choices })).not.toContain('lane-closed')
  })

  test('the second ball and one that crosses the line are anyone’s', () => {
    const second = { ...waiting, steps: [...waiting.steps, passStep('s2', 'RCB', 'CM')] }
    expect(notesOf(second, { choices }).filter((each) => each.code === 'lane-closed')).toMatchObject([{ stepId: 's2' }])
    const over = { ...waiting, steps: [play('s1', { kind: 'roll', from: 'GK', to: 'RW', into: { kind: 'feet' } })] }
    const high = moved(over, 'RW', spotAt('build-out-line-right', 1, -7))
    expect(codesOf(high, { choices })).toContain('lane-closed')
  })

  test('and the note says what they wait for', () => {
    const early = against(waiting, opponentAt('x1', spotAt('build-out-line-right', -2, -7)))
    const sentence = (options?: CheckOptions) =>
      notesOf(early, options).find((each) => each.code === 'build-out-line-law')?.sentence
    expect(sentence()).toContain('until the goalkeeper releases the ball')
    expect(sentence({ choices })).toContain('until a team-mate has touched the ball')
  })
})

describe('the remedy', () => {
  const remedyOf = (document: PatternDocument, code: NoteCode, options?: CheckOptions) =>
    notesOf(document, options).find((each) => each.code === code)?.remedy

  test('of a pass beyond the team’s reach is to come nearer', () => {
    const document = open(withSteps(passStep('s1', 'GK', 'RCB')))
    const remedy = remedyOf(document, 'beyond-team-reach', { teamReach: shortReach })
    expect(remedy).toMatchObject({ kind: 'come-to', position: 'RCB', start: 'with-the-ball' })
    const space = intoSpace('GK', 'RCB', samplePattern.positions[2]!.spot)
    const toSpace = remedyOf(open(withSteps(play('s1', space))), 'beyond-team-reach', { teamReach: shortReach })
    expect(toSpace).toMatchObject({ kind: 'meet-at', position: 'RCB' })
  })

  test('of a hidden receiver is an earlier run', () => {
    expect(remedyOf(hidden, 'cover-shadow')).toMatchObject({
      kind: 'start-run',
      position: 'CM',
      start: 'before-the-ball',
    })
  })

  test('of the last player who leaves is to stay', () => {
    expect(remedyOf(lastLeaves, 'nobody-behind')).toMatchObject({ kind: 'drop-run', stepId: 's2', position: 'LCB' })
  })

  test('of a carry into the tackle ends between near and far', () => {
    const middle = millimetres(((1.5 + 4) / 2) * 1000)
    const remedy = remedyOf(carriedTooNear, 'carry-release')
    expect(remedy).toMatchObject({ kind: 'meet-at', position: 'RCB' })
    expect(remedy?.sentence).toContain(`${Math.round(middle / 100) / 10} m`)
  })

  test('of a receiver who cannot see both is a step aside, where there is time to step', () => {
    const pressed = against(open(withSteps(passStep('s1', 'GK', 'CM'), passStep('s2', 'CM', 'ST'))), {
      ...opponentAt('x1', spotAt('penalty-arc-top', 1, 2)),
    })
    const remedy = remedyOf(pressed, 'out-of-view')
    // Square off the line from goalkeeper to striker, which runs straight up the middle, away from the opponent and no further
    // than it takes to have room to turn.
    expect(remedy).toMatchObject({ kind: 'come-to', stepId: 's1', position: 'CM' })
    if (remedy?.kind !== 'come-to') throw new Error('another remedy')
    const place = spotPoint(nominalSpace('us-7v7'), remedy.spot)!
    expect(place.x).toBeCloseTo(16.459, 2)
    expect(place.y).toBeCloseTo(-2, 2)
  })

  test('of a run that comes too late is the earlier start that is enough', () => {
    const meet = spotAt('penalty-area-corner-right', 3, 3)
    const late = play('s2', intoSpace('RCB', 'RW', meet), [run('RW', meet, 'with-the-ball')])
    const document = moved(open(withSteps(passStep('s1', 'GK', 'RCB'), late)), 'RW', spotAt('halfway-right', 3, -2))
    expect(remedyOf(document, 'receiver-late')).toMatchObject({ kind: 'start-run', start: 'before-the-ball' })
  })
})

test('a TD who asks for the weak side may leave it some room', () => {
  const document = open(
    withSteps(passStep('s1', 'GK', 'RCB'), {
      ...passStep('s2', 'RCB', 'RW'),
      runs: [run('LW', spotAt('centre-mark', 2, 1), 'before-the-ball')],
    }),
  )
  const room = { value: metres(2), kind: 'club', source: 'the club’s own limit' } as const
  expect(codesOf(document, { limits: ASKED_HABITS })).toContain('weak-side-over')
  expect(codesOf(document, { limits: { weakSideMetres: room } })).not.toContain('weak-side-over')
})
