import type { Column, ForeignKey, Introspection, Key } from './introspect'

/** Tables that belong to no club and that no feature reads through Prisma. */
const OUTSIDE_CLUBS: ReadonlySet<string> = new Set(['name_key_check', 'schema_migration'])

const PREAMBLE = `// A typed view of the migrations, written from a migrated database by \`npm run gen:schema\`; never edited by hand.
// Partial and expression indexes, checks, policies and grants stand in the migrations and in catalogue.txt.

generator client {
  provider     = "prisma-client"
  output       = "../apps/api/src/db/generated"
  runtime      = "nodejs"
  moduleFormat = "esm"
}

datasource db {
  provider = "postgresql"
}
`

const TYPES: ReadonlyMap<string, string> = new Map([
  ['uuid', 'String @db.Uuid'],
  ['text', 'String'],
  ['smallint', 'Int @db.SmallInt'],
  ['integer', 'Int'],
  ['bigint', 'BigInt'],
  ['boolean', 'Boolean'],
  ['jsonb', 'Json'],
  ['bytea', 'Bytes'],
  ['date', 'DateTime @db.Date'],
  ['time without time zone', 'DateTime @db.Time(6)'],
  ['timestamp with time zone', 'DateTime @db.Timestamptz(6)'],
])

type Field = { readonly name: string; readonly type: string; readonly attributes: readonly string[] }

/** The text of schema.prisma for a database: every column, key and foreign key, and nothing else. */
export function renderSchemaView(database: Introspection): string {
  const tables = [...new Set(database.columns.map((column) => column.table))].filter((name) => !OUTSIDE_CLUBS.has(name))
  return [PREAMBLE, ...tables.map((table) => renderModel(table, database))].join('\n')
}

function renderModel(table: string, database: Introspection): string {
  const columns = database.columns.filter((column) => column.table === table)
  const keys = database.keys.filter((key) => key.table === table)
  const fields = [
    ...columns.map(columnField),
    ...database.foreignKeys.filter((key) => key.table === table).map((key) => forwardField(key, database)),
    ...database.foreignKeys.filter((key) => key.target === table).map((key) => backwardField(key, database)),
  ]
  const nameWidth = Math.max(...fields.map((field) => field.name.length))
  const typeWidth = Math.max(...fields.map((field) => field.type.length))
  const lines = fields.map((field) =>
    `  ${field.name.padEnd(nameWidth)} ${field.type.padEnd(typeWidth)} ${field.attributes.join(' ')}`.trimEnd(),
  )
  return `model ${pascal(table)} {\n${lines.join('\n')}\n\n${[...keys.map(renderKey), mapLine(table)].join('\n')}\n}\n`
}

function columnField(column: Column): Field {
  const list = column.type.endsWith('[]')
  const [type, ...native] = (TYPES.get(column.type.replace(/\[\]$/, '')) ?? '').split(' ')
  if (!type) throw new Error(`${column.table}.${column.name}: no Prisma type stands for ${column.type}`)
  const name = camel(column.name)
  const mapped = name === column.name ? [] : [`@map("${column.name}")`]
  return {
    name,
    type: list ? `${type}[]` : column.nullable ? `${type}?` : type,
    attributes: [...fallbackOf(column), ...mapped, ...native],
  }
}

function fallbackOf(column: Column): readonly string[] {
  if (column.fallback === null) return []
  if (/^(now\(\)|true|false|\d+)$/.test(column.fallback)) return [`@default(${column.fallback})`]
  return [`@default(dbgenerated(${JSON.stringify(column.fallback)}))`]
}

function renderKey(key: Key): string {
  const columns = key.columns.map(camel).join(', ')
  return `  ${key.kind === 'primary' ? '@@id' : '@@unique'}([${columns}]${key.kind === 'unique' ? `, map: "${key.name}"` : ''})`
}

function mapLine(table: string): string {
  return `  @@map("${table}")`
}

function forwardField(key: ForeignKey, database: Introspection): Field {
  const optional = key.columns.some(
    (name) => database.columns.find((column) => column.table === key.table && column.name === name)?.nullable,
  )
  const fields = key.columns.map(camel).join(', ')
  const references = key.targetColumns.map(camel).join(', ')
  return {
    name: forwardName(key),
    type: `${pascal(key.target)}${optional ? '?' : ''}`,
    attributes: [
      `@relation(${relationName(key, database)}fields: [${fields}], references: [${references}], onDelete: NoAction, onUpdate: NoAction, map: "${key.name}")`,
    ],
  }
}

function backwardField(key: ForeignKey, database: Introspection): Field {
  const named = relationName(key, database)
  const single = database.keys.some(
    (candidate) =>
      candidate.table === key.table && [...candidate.columns].sort().join() === [...key.columns].sort().join(),
  )
  const name = single ? camel(key.table) : plural(camel(key.table))
  return {
    name: named === '' ? name : `${name}As${upperFirst(forwardName(key))}`,
    type: `${pascal(key.table)}${single ? '?' : '[]'}`,
    attributes: named === '' ? [] : [`@relation(${named.replace(/, $/, '')})`],
  }
}

/** A key that uses its target's own column names is called after the target; another says its own role too. */
function forwardName(key: ForeignKey): string {
  if (key.columns.join() === key.targetColumns.join()) return camel(key.target)
  return `${camel(key.columns.at(-1)!.replace(/_id$/, ''))}${pascal(key.target)}`
}

/** Prisma asks for a name where two relations join the same two tables. */
function relationName(key: ForeignKey, database: Introspection): string {
  const alike = database.foreignKeys.filter((other) => other.table === key.table && other.target === key.target)
  return alike.length > 1 || key.table === key.target ? `"${key.name}", ` : ''
}

function plural(name: string): string {
  if (name.endsWith('um')) return `${name.slice(0, -2)}a`
  if (/[^aeiou]y$/.test(name)) return `${name.slice(0, -1)}ies`
  return name.endsWith('s') ? name : `${name}s`
}

function camel(name: string): string {
  return name.replace(/_([a-z])/g, (_, letter: string) => letter.toUpperCase())
}

function pascal(name: string): string {
  return upperFirst(camel(name))
}

function upperFirst(name: string): string {
  return name.charAt(0).toUpperCase() + name.slice(1)
}
