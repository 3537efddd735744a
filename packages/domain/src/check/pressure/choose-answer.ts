import { distance, type Point } from '../../geometry'
import { listBranches } from '../../pattern'
import type { Space } from '../../pitch'
import { millimetresOf } from '../../quantities'
import { type CoverOptions, coverRules } from '../cover/cover-rules'
import { lookLogic } from '../cover/look-state'
import type { PlaceGrid } from '../cover/place-grid'
import { type LookScene, sceneOf } from '../cover/scene'
import { presserFrom } from '../cover/signs'
import type { Play } from './play'
import type { ChooseAnswer } from './press-setting'

/**
 * Looks are answered under pressure as branch cover says they are: the first answer whose sign shows and whose lanes are
 * open against the opponents where they are at that moment. Where nothing is open the ball is played as drawn.
 */
export function chooserFor(space: Space, options: CoverOptions): ChooseAnswer {
  const scenes = new Map<Play, Map<string, LookScene>>()
  return (look, play, opponents) => {
    const rules = coverRules(play.document, space, options)
    const known = scenes.get(play) ?? new Map<string, LookScene>()
    scenes.set(play, known)
    const scene = known.get(look.lookId) ?? sceneOf(rules, play.states, listBranches(play.document), look)
    known.set(look.lookId, scene)
    const logic = lookLogic(scene, rules, placesOf(opponents))
    const state = logic.states.reduce((bits, each) => logic.merge(bits, each), logic.base)
    const nearest = nearestTo(scene.looker, opponents)
    const way = logic.taken(state, nearest === null ? null : presserFrom(scene, nearest, rules))
    return way === null ? null : (scene.ways[way]?.answer ?? null)
  }
}

/** The opponents themselves are the places that are asked about. */
function placesOf(opponents: readonly Point[]): PlaceGrid {
  return opponents.map((at, row) => ({ at, row, column: 0 }))
}

function nearestTo(place: Point, opponents: readonly Point[]): Point | null {
  const off = (each: Point) => millimetresOf(distance(each, place))
  return opponents.reduce<Point | null>(
    (nearest, each) => (nearest === null || off(each) < off(nearest) ? each : nearest),
    null,
  )
}
