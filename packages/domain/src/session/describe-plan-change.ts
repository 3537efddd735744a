import { listInWords } from './notes'
import type { PlannedActivity, SessionPlan } from './plan'

/** So many changes are said in one line; the plan itself shows the rest. */
const CHANGES_SAID = 3

/** What changed from one plan of an evening to the next, in one line; null where a coach would see no difference. */
export function describePlanChange(before: SessionPlan, after: SessionPlan): string | null {
  const changes = [
    ...countChange(before, after),
    ...kindChange(before, after),
    ...comeAndGone(before, after),
    ...activityChanges(before, after),
    ...setOutChange(before, after),
  ]
  if (changes.length === 0) return null
  const said = changes.slice(0, CHANGES_SAID).join(' ')
  return changes.length > CHANGES_SAID ? `${said} And more.` : said
}

function countChange(before: SessionPlan, after: SessionPlan): readonly string[] {
  const [was, is] = [before.children.length, after.children.length]
  if (was !== is) return [`${is} play, not ${was}.`]
  const isSame = after.children.every((id, index) => id === before.children[index])
  return isSame ? [] : [`Still ${is}, but other children play.`]
}

function kindChange(before: SessionPlan, after: SessionPlan): readonly string[] {
  if (before.kind !== after.kind)
    return [after.kind === 'games-only' ? 'Games only now.' : 'The pattern can be run now.']
  return before.stage?.stageId === after.stage?.stageId ? [] : ['Another stage tonight.']
}

/** An activity stays the same one while its id and kind do; a pattern that became a game was said already. */
function comeAndGone(before: SessionPlan, after: SessionPlan): readonly string[] {
  const titlesMissing = (from: SessionPlan, there: SessionPlan) =>
    from.activities
      .filter((activity) => !findSame(there, activity) && !isTheme(activity))
      .map((activity) => activity.title)
  const gone = before.kind === after.kind ? titlesMissing(before, after) : []
  const come = before.kind === after.kind ? titlesMissing(after, before) : []
  return [
    ...(gone.length > 0 ? [`Out: ${listInWords(gone)}.`] : []),
    ...(come.length > 0 ? [`In: ${listInWords(come)}.`] : []),
  ]
}

function isTheme(activity: PlannedActivity): boolean {
  return activity.kind === 'pattern'
}

function findSame(plan: SessionPlan, activity: PlannedActivity): PlannedActivity | undefined {
  return plan.activities.find((other) => other.activityId === activity.activityId && other.kind === activity.kind)
}

function activityChanges(before: SessionPlan, after: SessionPlan): readonly string[] {
  return after.activities.flatMap((activity) => {
    const was = findSame(before, activity)
    if (!was) return []
    const parts = [
      ...(was.detail === activity.detail ? [] : [activity.detail]),
      ...(was.minutes === activity.minutes ? [] : [`${activity.minutes} minutes`]),
    ]
    return parts.length > 0 ? [`${activity.title}: ${parts.join(', ')}.`] : []
  })
}

function setOutChange(before: SessionPlan, after: SessionPlan): readonly string[] {
  const placesOf = (plan: SessionPlan) => plan.setOut.map((stop) => `${stop.item} ${stop.upMm} ${stop.rightMm}`)
  const there = new Set(placesOf(before))
  const added = placesOf(after).filter((place) => !there.has(place)).length
  const removed = placesOf(before).filter((place) => !placesOf(after).includes(place)).length
  return added + removed === 0 ? [] : [`Set-out: ${added} new, ${removed} away.`]
}
