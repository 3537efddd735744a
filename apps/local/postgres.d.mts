export type Server = {
  readonly port: number
  /** True where the server ran already. */
  readonly reused: boolean
  /** Where its files lie. */
  readonly folder: string
  /** As superuser. */
  urlOf(database: string): string
  stop(): Promise<void>
}

export function startPostgres(wish: {
  readonly folder: string
  readonly password: string
  readonly settings?: Readonly<Record<string, string>>
  readonly initArguments?: readonly string[]
}): Promise<Server>

export function endPostgres(folder: string): Promise<string>
