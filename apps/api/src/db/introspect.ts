import type { ClientBase } from 'pg'

export type Column = {
  readonly table: string
  readonly name: string
  /** As format_type says it: "smallint", "timestamp with time zone", "bytea[]". */
  readonly type: string
  readonly nullable: boolean
  readonly fallback: string | null
}

export type Key = {
  readonly table: string
  readonly kind: 'primary' | 'unique'
  readonly name: string
  readonly columns: readonly string[]
}

export type ForeignKey = {
  readonly table: string
  readonly name: string
  readonly columns: readonly string[]
  readonly target: string
  readonly targetColumns: readonly string[]
}

/** The tables of the schema public, as the live database has them. */
export type Introspection = {
  readonly columns: readonly Column[]
  readonly keys: readonly Key[]
  readonly foreignKeys: readonly ForeignKey[]
}

const COLUMNS = `
  select c.relname as "table", a.attname as name, format_type(a.atttypid, a.atttypmod) as type,
         not a.attnotnull as nullable, pg_get_expr(d.adbin, d.adrelid) as fallback
  from pg_attribute a
  join pg_class c on c.oid = a.attrelid and c.relkind = 'r' and c.relnamespace = 'public'::regnamespace
  left join pg_attrdef d on d.adrelid = a.attrelid and d.adnum = a.attnum
  where a.attnum > 0 and not a.attisdropped
  order by c.relname, a.attnum`

// A unique index serves as a key only where it holds for every row and names plain columns.
const KEYS = `
  select c.relname as "table", case when i.indisprimary then 'primary' else 'unique' end as kind, x.relname as name,
         array(select a.attname::text from unnest(i.indkey[0:i.indnkeyatts - 1]) with ordinality k(attnum, place)
               join pg_attribute a on a.attrelid = c.oid and a.attnum = k.attnum order by k.place) as columns
  from pg_index i
  join pg_class x on x.oid = i.indexrelid
  join pg_class c on c.oid = i.indrelid and c.relkind = 'r' and c.relnamespace = 'public'::regnamespace
  where i.indisunique and i.indpred is null and i.indexprs is null
  order by c.relname, x.relname`

const FOREIGN_KEYS = `
  select c.relname as "table", k.conname as name, t.relname as target,
         array(select a.attname::text from unnest(k.conkey) with ordinality p(attnum, place)
               join pg_attribute a on a.attrelid = k.conrelid and a.attnum = p.attnum order by p.place) as columns,
         array(select a.attname::text from unnest(k.confkey) with ordinality p(attnum, place)
               join pg_attribute a on a.attrelid = k.confrelid and a.attnum = p.attnum order by p.place)
           as "targetColumns"
  from pg_constraint k
  join pg_class c on c.oid = k.conrelid and c.relnamespace = 'public'::regnamespace
  join pg_class t on t.oid = k.confrelid
  where k.contype = 'f' and k.conparentid = 0
  order by c.relname, k.conname`

export async function introspect(client: ClientBase): Promise<Introspection> {
  const columns = await client.query<Column>(COLUMNS)
  const keys = await client.query<Key>(KEYS)
  const foreignKeys = await client.query<ForeignKey>(FOREIGN_KEYS)
  return { columns: columns.rows, keys: keys.rows, foreignKeys: foreignKeys.rows }
}
