import type { CommandAnswer } from './commands/run-command'
import type { Log } from './deps'

// Business events, one function each. They are for people who run the service: they tell of ids and counts, are said
// after the commit, and never throw. What has to be provable stands in the record book instead.

export function versionPublished(log: Log, clubId: string, answer: CommandAnswer): void {
  note(log, 'version published', { clubId, curriculumId: answer.id, number: answer.version, replayed: answer.replayed })
}

export function versionAdopted(log: Log, clubId: string, teamId: string, answer: CommandAnswer): void {
  note(log, 'version adopted', { clubId, teamId, adoptionId: answer.id, replayed: answer.replayed })
}

export function operationsTaken(
  log: Log,
  clubId: string,
  counts: Readonly<Record<'applied' | 'replayed' | 'refused' | 'unknown', number>>,
): void {
  note(log, 'operations taken', { clubId, ...counts })
}

function note(log: Log, event: string, facts: Readonly<Record<string, unknown>>): void {
  try {
    log.info({ event, ...facts }, event)
  } catch {
    // A log that cannot be written must not undo what was done.
  }
}
