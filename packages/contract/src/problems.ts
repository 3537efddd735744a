import * as z from 'zod/mini'

/**
 * Every problem the API answers with (RFC 9457). Codes are never renamed: phones of last season still read them.
 * `title` is what the person reads; `detail`, where given, says what to do.
 */
export const problems = {
  'bad-request': { status: 400, title: 'Something in the request is not as it should be' },
  'body-not-json': { status: 400, title: 'The body is not JSON that can be read' },
  'idempotency-key-missing': { status: 400, title: 'A write needs an Idempotency-Key made by the client' },
  'formation-count': { status: 400, title: 'The formation does not add up to the players of the format' },
  'position-twice': { status: 400, title: 'A position is used twice' },
  'position-unknown': { status: 400, title: 'A step names a position that the pattern does not have' },
  'passer-without-ball': { status: 400, title: 'A step is played by someone who does not have the ball' },
  'nobody-receives': { status: 400, title: 'Nobody can receive a step' },
  'identifier-twice': { status: 400, title: 'The same identifier stands twice' },
  'reference-unknown': { status: 400, title: 'Something named does not exist in this document' },
  'squad-row-faults': { status: 400, title: 'Some rows of the squad cannot stand' },
  'point-too-long': { status: 400, title: 'A coaching point has more than six words' },
  'not-signed-in': { status: 401, title: 'Sign in first' },
  'link-not-valid': { status: 401, title: 'This sign-in link has been used, has run out or was replaced' },
  'not-allowed': { status: 403, title: 'You may see this, but not do that' },
  'cross-site': { status: 403, title: 'A write must come from the page itself' },
  'not-found': { status: 404, title: 'There is no such thing, or you may not see it' },
  'too-slow': { status: 408, title: 'The request took too long to arrive' },
  'still-running': { status: 409, title: 'The same command is still running' },
  'already-exists': { status: 409, title: 'That exists already' },
  'version-is-stale': { status: 412, title: 'Someone saved a newer version' },
  'too-large': { status: 413, title: 'The request is too large' },
  'json-only': { status: 415, title: 'A write must be application/json' },
  'key-used-for-another-command': { status: 422, title: 'This key was used for another command' },
  'draft-empty': { status: 422, title: 'A curriculum needs at least one stage' },
  'draft-has-notes-to-fix': { status: 422, title: 'These notes must be fixed before publishing' },
  'draft-has-no-model-session': { status: 422, title: 'A curriculum needs at least one model session' },
  'teaching-missing': { status: 422, title: 'Teaching content is missing' },
  'pattern-unknown': { status: 422, title: 'The draft names a pattern the club does not have' },
  'stage-unknown': { status: 422, title: 'The stage is not part of the version the team follows' },
  'date-unknown': { status: 422, title: 'The team has no such training date' },
  'evening-not-begun': { status: 422, title: 'This evening has not begun yet' },
  'evening-not-on': { status: 422, title: 'This evening was called off or moved' },
  'player-unknown': { status: 422, title: 'A child named here is not in the squad' },
  'plan-does-not-hold': { status: 422, title: 'The plan breaks a rule every plan keeps' },
  'nothing-adopted': { status: 422, title: 'The team follows no version yet' },
  'version-not-offered': { status: 422, title: 'This version is not offered for adoption' },
  'report-stands-already': { status: 422, title: 'A report of this evening stands already' },
  'last-administrator': { status: 422, title: 'A club keeps at least one administrator' },
  'person-left': { status: 422, title: 'This person has left the club' },
  'nothing-changed': { status: 422, title: 'This changes nothing' },
  'profiles-not-possible': { status: 422, title: 'Some values of an age profile cannot be' },
  'too-many-runs': { status: 422, title: 'So many error runs are not played at once' },
  'check-too-much': { status: 422, title: 'This check takes more than one may; ask for less at once' },
  'condition-required': { status: 428, title: 'Say which version you are changing (If-Match)' },
  'too-many': { status: 429, title: 'Too many requests; try again shortly' },
  broken: { status: 500, title: 'Something broke on our side; nothing was changed' },
  'not-ready': { status: 503, title: 'The service cannot answer just now; try again' },
  busy: { status: 503, title: 'Too many checks are waiting; try again shortly' },
  'outcome-unknown': { status: 503, title: 'The answer was lost; send the same command again' },
} as const satisfies Record<string, { readonly status: number; readonly title: string }>

export type ProblemCode = keyof typeof problems
export const problemCodes = Object.keys(problems) as readonly ProblemCode[]

export const problemError = z.strictObject({
  /** JSON Pointer into the body, or a name like query/weekFrom. */
  pointer: z.string(),
  detail: z.string(),
  code: z.optional(z.string()),
})

export const problem = z.strictObject({
  type: z.string(),
  title: z.string(),
  status: z.int(),
  detail: z.optional(z.string()),
  /** The request id. */
  instance: z.string(),
  code: z.enum(problemCodes as unknown as readonly [ProblemCode, ...ProblemCode[]]),
  errors: z.optional(z.array(problemError)),
  /** With 412: the version that stands now. */
  current: z.optional(z.strictObject({ version: z.int(), document: z.unknown() })),
})
export type Problem = z.infer<typeof problem>
