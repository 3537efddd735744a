/** Every page's address, once. Links are made with `pageTo`; nothing else in the app spells an address. */
export const pages = {
  home: '/',
  signIn: '/sign-in',
  gallery: '/gallery',
  people: '/clubs/:clubId/people',
  person: '/clubs/:clubId/people/:memberId',
  teams: '/clubs/:clubId/teams',
  team: '/clubs/:clubId/teams/:teamId',
  squad: '/clubs/:clubId/teams/:teamId/squad',
  spaces: '/clubs/:clubId/spaces',
  space: '/clubs/:clubId/spaces/:spaceId',
  patterns: '/clubs/:clubId/patterns',
  newPattern: '/clubs/:clubId/patterns/new',
  pattern: '/clubs/:clubId/patterns/:patternId',
  ageProfiles: '/clubs/:clubId/age-profiles',
  curricula: '/clubs/:clubId/curricula',
  curriculum: '/clubs/:clubId/curricula/:curriculumId',
  draft: '/clubs/:clubId/curricula/:curriculumId/draft',
  version: '/clubs/:clubId/curricula/:curriculumId/versions/:number',
  coverage: '/clubs/:clubId/planned-and-done',
  ledger: '/clubs/:clubId/record-book',
  /** One static page; which club, team and view it shows stands in the query, so that it opens offline. */
  field: '/field',
} as const

export type PageTemplate = (typeof pages)[keyof typeof pages]

type ParamsOf<Template extends string> = Template extends `${string}:${infer Name}/${infer Rest}`
  ? Name | ParamsOf<Rest>
  : Template extends `${string}:${infer Name}`
    ? Name
    : never

/** Fills an address; a missing parameter does not compile. */
export function pageTo<Template extends PageTemplate>(
  template: Template,
  params: Readonly<Record<ParamsOf<Template>, string | number>>,
  query: Readonly<Record<string, string>> = {},
): string {
  const values: Readonly<Record<string, string | number>> = params
  const filled = template.replace(/:([A-Za-z]+)/g, (_, name: string) => encodeURIComponent(String(values[name])))
  const search = new URLSearchParams(query).toString()
  return search === '' ? filled : `${filled}?${search}`
}
