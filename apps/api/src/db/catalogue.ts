import type { ClientBase } from 'pg'

// What the database really is, as text: the committed prisma/catalogue.txt must equal it, so that no table, key, index,
// policy or grant changes without somebody reading the change.

const SECTIONS = {
  columns: `
    select format('%s.%s.%s %s%s%s', n.nspname, c.relname, a.attname, format_type(a.atttypid, a.atttypmod),
                  case when a.attnotnull then ' not null' else '' end,
                  coalesce(' default ' || pg_get_expr(d.adbin, d.adrelid), '')) as line, c.relname, a.attnum
    from pg_attribute a join pg_class c on c.oid = a.attrelid join pg_namespace n on n.oid = c.relnamespace
    left join pg_attrdef d on d.adrelid = a.attrelid and d.adnum = a.attnum
    where c.relkind = 'r' and n.nspname in ('public', 'identity') and a.attnum > 0 and not a.attisdropped
    order by n.nspname, c.relname, a.attnum`,
  // Newer servers list NOT NULL among the constraints; the columns above say it already.
  constraints: `
    select format('%s.%s %s %s', n.nspname, c.relname, k.conname, pg_get_constraintdef(k.oid)) as line
    from pg_constraint k join pg_class c on c.oid = k.conrelid join pg_namespace n on n.oid = c.relnamespace
    where n.nspname in ('public', 'identity') and k.contype <> 'n'
    order by n.nspname, c.relname, k.conname`,
  indexes: `
    select indexdef as line from pg_indexes where schemaname in ('public', 'identity')
    order by schemaname, tablename, indexname`,
  'row security': `
    select format('%s.%s %s', n.nspname, c.relname,
                  case when c.relrowsecurity and c.relforcerowsecurity then 'forced'
                       when c.relrowsecurity then 'enabled' else 'none' end) as line
    from pg_class c join pg_namespace n on n.oid = c.relnamespace
    where c.relkind = 'r' and n.nspname in ('public', 'identity')
    order by n.nspname, c.relname`,
  policies: `
    select format('%s.%s %s %s %s to %s using (%s) with check (%s)', schemaname, tablename, policyname,
                  lower(permissive), lower(cmd), array_to_string(roles, ', '), qual, with_check) as line
    from pg_policies order by schemaname, tablename, policyname`,
  'grants on tables': `
    select format('%s.%s %s: %s', n.nspname, c.relname, grantee.name,
                  string_agg(lower(g.privilege_type), ', ' order by g.privilege_type)) as line
    from pg_class c join pg_namespace n on n.oid = c.relnamespace, aclexplode(c.relacl) g,
         lateral (select case g.grantee when 0 then 'PUBLIC' else g.grantee::regrole::text end as name) grantee
    where c.relkind = 'r' and n.nspname in ('public', 'identity') and g.grantee <> c.relowner
    group by n.nspname, c.relname, grantee.name order by n.nspname, c.relname, grantee.name`,
  'grants on columns': `
    select format('%s.%s %s: %s (%s)', n.nspname, c.relname, grantee.name, lower(g.privilege_type),
                  string_agg(a.attname, ', ' order by a.attnum)) as line
    from pg_attribute a join pg_class c on c.oid = a.attrelid join pg_namespace n on n.oid = c.relnamespace,
         aclexplode(a.attacl) g,
         lateral (select case g.grantee when 0 then 'PUBLIC' else g.grantee::regrole::text end as name) grantee
    where n.nspname in ('public', 'identity')
    group by n.nspname, c.relname, grantee.name, g.privilege_type
    order by n.nspname, c.relname, grantee.name, g.privilege_type`,
  'grants on schemas': `
    select format('%s %s: %s', n.nspname, grantee.name, string_agg(lower(g.privilege_type), ', ' order by g.privilege_type)) as line
    from pg_namespace n, aclexplode(n.nspacl) g,
         lateral (select case g.grantee when 0 then 'PUBLIC' else g.grantee::regrole::text end as name) grantee
    where n.nspname in ('public', 'identity') and g.grantee <> n.nspowner
    group by n.nspname, grantee.name order by n.nspname, grantee.name`,
  'functions, triggers, views and sequences': `
    select line from (
      select format('function %s', p.oid::regprocedure) as line from pg_proc p
        where p.pronamespace in ('public'::regnamespace, 'identity'::regnamespace)
      union all
      select format('trigger %s on %s', t.tgname, t.tgrelid::regclass) from pg_trigger t where not t.tgisinternal
      union all
      select format('%s %s', case c.relkind when 'S' then 'sequence' else 'view' end, c.oid::regclass) from pg_class c
        where c.relkind in ('v', 'm', 'S') and c.relnamespace in ('public'::regnamespace, 'identity'::regnamespace)
    ) others order by line`,
} as const satisfies Record<string, string>

export async function describeCatalogue(client: ClientBase): Promise<string> {
  const parts: string[] = ['Written from a migrated database by `npm run gen:schema`; never edited by hand.\n']
  for (const [title, query] of Object.entries(SECTIONS)) {
    const { rows } = await client.query<{ line: string }>(query)
    const lines = rows.map((row) => row.line)
    parts.push(`# ${title}\n${lines.length === 0 ? '(none)' : lines.join('\n')}\n`)
  }
  return parts.join('\n')
}
