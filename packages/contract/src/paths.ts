/** Every URL of the API, once. Routes register the template; clients fill it with `pathTo`. */
export const paths = {
  openapi: '/v1/openapi.json',
  logins: '/v1/logins',
  currentLogin: '/v1/logins/current',
  me: '/v1/me',
  patternChecks: '/v1/pattern-checks',

  club: '/v1/clubs/:clubId',
  settings: '/v1/clubs/:clubId/settings',
  people: '/v1/clubs/:clubId/people',
  person: '/v1/clubs/:clubId/people/:memberId',
  signInLinks: '/v1/clubs/:clubId/people/:memberId/sign-in-links',
  seasons: '/v1/clubs/:clubId/seasons',
  teams: '/v1/clubs/:clubId/teams',
  team: '/v1/clubs/:clubId/teams/:teamId',
  reach: '/v1/clubs/:clubId/teams/:teamId/reach',
  spaces: '/v1/clubs/:clubId/spaces',
  space: '/v1/clubs/:clubId/spaces/:spaceId',
  slots: '/v1/clubs/:clubId/teams/:teamId/training-slots',
  dates: '/v1/clubs/:clubId/teams/:teamId/training-dates',
  equipment: '/v1/clubs/:clubId/equipment',
  squad: '/v1/clubs/:clubId/teams/:teamId/squad',
  squadImports: '/v1/clubs/:clubId/teams/:teamId/squad-imports',
  player: '/v1/clubs/:clubId/teams/:teamId/squad/:playerId',

  patterns: '/v1/clubs/:clubId/patterns',
  pattern: '/v1/clubs/:clubId/patterns/:patternId',
  curricula: '/v1/clubs/:clubId/curricula',
  curriculum: '/v1/clubs/:clubId/curricula/:curriculumId',
  draft: '/v1/clubs/:clubId/curricula/:curriculumId/draft',
  versions: '/v1/clubs/:clubId/curricula/:curriculumId/versions',
  version: '/v1/clubs/:clubId/curricula/:curriculumId/versions/:number',
  adoptions: '/v1/clubs/:clubId/teams/:teamId/adoptions',

  kit: '/v1/clubs/:clubId/teams/:teamId/kit',
  operations: '/v1/clubs/:clubId/operations',
  teamRecords: '/v1/clubs/:clubId/teams/:teamId/records',
  record: '/v1/clubs/:clubId/records/:recordId',

  coverage: '/v1/clubs/:clubId/coverage',
  coverageCell: '/v1/clubs/:clubId/coverage/cell',
  ledgerHead: '/v1/clubs/:clubId/ledger/head',
  ledgerEntries: '/v1/clubs/:clubId/ledger/entries',
  ledgerInclusion: '/v1/clubs/:clubId/ledger/entries/:entryId/inclusion',
  ledgerConsistency: '/v1/clubs/:clubId/ledger/consistency',
} as const

export type PathTemplate = (typeof paths)[keyof typeof paths]

type ParamsOf<Template extends string> = Template extends `${string}:${infer Name}/${infer Rest}`
  ? Name | ParamsOf<Rest>
  : Template extends `${string}:${infer Name}`
    ? Name
    : never

/** Fills a template; a missing parameter does not compile. */
export function pathTo<Template extends PathTemplate>(
  template: Template,
  params: Readonly<Record<ParamsOf<Template>, string | number>>,
  query?: Readonly<Record<string, string>>,
): string {
  const filled = template.replace(/:([A-Za-z]+)/g, (_, name: string) =>
    encodeURIComponent(String((params as Record<string, string | number>)[name])),
  )
  const search = query === undefined ? '' : new URLSearchParams(query).toString()
  return search === '' ? filled : `${filled}?${search}`
}
