import { listBranches, type PatternDocument } from '../../pattern'
import type { Space } from '../../pitch'
import { millisecondsOf } from '../../quantities'
import { playStates } from '../timeline'
import { saySeconds } from '../wording'
import { allowedPlaces } from './allowed-places'
import { choose, countPlacements, type StateCount } from './count-placements'
import { type CoverOptions, type CoverRules, coverRules } from './cover-rules'
import { type HolePlaces, largestHoles, smallestHoles, takenAt } from './holes'
import { type LookCover, type SignNote, X_COUNTS, type XCount, type XCover } from './look-cover'
import { type LookLogic, lookLogic } from './look-state'
import type { PlaceGrid } from './place-grid'
import { sayCover, sayHole } from './say-cover'
import { type LookScene, sceneOf } from './scene'

/**
 * For every look of a pattern: with one, two and three X anywhere the law lets them stand, is something open, and what is
 * taken? The answers are tried in order, each when its sign shows and all its balls get through; then the ball as drawn; then
 * what is kept for when all is shut, the exit last. Where none of them is open lies a hole.
 *
 * X stand still until a ball is played and each ball meets them where they stood at the look, as in the notes; drawn opponents
 * and poles are left out, since the X counted here take their place.
 *
 * What is certain: an answer more never makes a hole. One X more never opens a ball and a slower reaction never shuts one, so
 * each way's share of `lanesOpen` only falls with more X and only rises with slower ones. The whole share does so too while
 * signs do not get in between: with slower X, as long as `lane-shut` speaks of the ball as drawn; with more X, if there is no
 * other sign than that and `presser-stays-off`. Any other sign may show only because one X more came, and what it calls for
 * may be open.
 *
 * The document must have passed `checkShape`. Pure and deterministic, the mirror of the result is the result of the mirror.
 */
export function coverOf(document: PatternDocument, space: Space, options: CoverOptions = {}): readonly LookCover[] {
  if (document.looks.length === 0) return []
  const rules = coverRules(document, space, options)
  const trunk = playStates(document, rules.play)
  const branches = listBranches(document)
  return document.looks.map((look) => coverScene(sceneOf(rules, trunk, branches, look), rules))
}

function coverScene(scene: LookScene, rules: CoverRules): LookCover {
  const { look, ways } = scene
  const grid = allowedPlaces(scene, rules)
  const logic = lookLogic(scene, rules, grid)
  const holes = smallestHoles(logic, grid)
  return {
    lookId: look.lookId,
    stepId: look.stepId,
    by: look.by,
    ways: ways.map(({ letter, balls, signSeconds, arrives }) => ({
      letter,
      stepIds: balls.map((ball) => ball.stepId),
      signSeconds,
      arrives,
    })),
    places: grid.map(({ at }, index) => ({ at, way: takenAt(logic, [index]) })),
    counts: countPlacements(logic).map((states, at) =>
      coverAgainst(scene, rules, grid, logic, holes, X_COUNTS[at]!, states),
    ),
    notes: signNotes(scene, rules),
  }
}

function coverAgainst(
  scene: LookScene,
  rules: CoverRules,
  grid: PlaceGrid,
  logic: LookLogic,
  holes: readonly HolePlaces[],
  opponents: XCount,
  states: readonly StateCount[],
): XCover {
  const placements = choose(grid.length, opponents)
  const ways = scene.ways.map(() => ({ taken: 0, lanesOpen: 0 }))
  for (const { state, presser, count } of states) {
    const taken = logic.taken(state, presser)
    if (taken !== null) ways[taken]!.taken += count
    ways.forEach((way, index) => {
      if (logic.isOpen(state, index)) way.lanesOpen += count
    })
  }
  const open = ways.reduce((sum, way) => sum + way.taken, 0)
  const named = open === placements ? [] : largestHoles(holes, grid, opponents)
  const cover = {
    opponents,
    placements,
    open,
    perMille: placements === 0 ? null : (open * 1000 - ((open * 1000) % placements)) / placements,
    ways,
    holes: named.map((places) => {
      const at = places.map((place) => grid[place]!.at)
      return { at, words: sayHole(scene, rules, at) }
    }),
  }
  return { ...cover, sentence: sayCover(cover) }
}

/** The sign must be in sight for a while: from the ball before, at which X move, until this one is played. */
function signNotes({ look, ways }: LookScene, { coverLimits }: CoverRules): readonly SignNote[] {
  const limit = coverLimits.signSeconds
  return ways.flatMap(({ letter, balls, signSeconds }): SignNote[] => {
    const stepId = balls[0]?.stepId
    if (letter === null || signSeconds === null || stepId === undefined) return []
    if (millisecondsOf(signSeconds) >= millisecondsOf(limit.value)) return []
    return [
      {
        code: 'sign-too-short',
        severity: 'note',
        stepId,
        position: look.by,
        value: millisecondsOf(signSeconds) / 1000,
        limit: limit.value,
        unit: 's',
        sourceKind: limit.kind,
        source: limit.source,
        sentence: `${look.by} sees the sign for answer ${letter} only ${saySeconds(signSeconds)} before playing.`,
      },
    ]
  })
}
