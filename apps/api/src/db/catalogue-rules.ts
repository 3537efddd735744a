// Rules that hold for every club table, also for one added tomorrow. Each query lists what breaks its rule, so an empty
// answer is the pass.

/** Tables of the schema public that belong to no club. */
const NO_CLUB = `('name_key_check', 'schema_migration')`

const CLUB_TABLES = `
  select c.oid, c.relname, c.relrowsecurity, c.relforcerowsecurity from pg_class c
  where c.relkind in ('r', 'p') and c.relnamespace = 'public'::regnamespace and c.relname not in ${NO_CLUB}`

const RUNTIME = `('espalier_app'), ('espalier_identity'), ('espalier_signer')`

export const CATALOGUE_RULES = {
  'every table has club_id, first and never null': `
    select t.relname as broken from (${CLUB_TABLES}) t
    where not exists (select from pg_attribute a where a.attrelid = t.oid and a.attname = 'club_id' and a.attnum = 1 and a.attnotnull)`,
  'row security is on and forced': `
    select t.relname as broken from (${CLUB_TABLES}) t where not (t.relrowsecurity and t.relforcerowsecurity)`,
  'a restrictive policy for every role and command guards each table': `
    select t.relname as broken from (${CLUB_TABLES}) t
    where not exists (select from pg_policy p where p.polrelid = t.oid and not p.polpermissive and p.polcmd = '*'
                        and p.polroles = '{0}' and p.polqual is not null and p.polwithcheck is not null)`,
  'each guard names the club of the transaction, and nothing else': `
    select p.polrelid::regclass::text as broken from pg_policy p
    where not p.polpermissive and (
      pg_get_expr(p.polqual, p.polrelid) is distinct from pg_get_expr(p.polwithcheck, p.polrelid)
      or pg_get_expr(p.polqual, p.polrelid) !~ '^\\(club_id = \\( SELECT \\(NULLIF\\(current_setting\\(''app.club_id''::text, true\\), ''''::text\\)\\)::uuid AS "?nullif"?\\)\\)$')`,
  'each permissive policy is for a named role': `
    select p.polrelid::regclass::text || '.' || p.polname as broken from pg_policy p where p.polpermissive and p.polroles = '{0}'`,
  'each policy that lets rows in checks them': `
    select p.polrelid::regclass::text || '.' || p.polname as broken from pg_policy p
    where p.polcmd in ('*', 'a', 'w') and p.polwithcheck is null`,
  'no view, definer function, trigger, rule or sequence': `
    select broken from (
      select c.oid::regclass::text as broken, c.relnamespace as space from pg_class c where c.relkind in ('v', 'm', 'S', 'f')
      union all select p.oid::regprocedure::text, p.pronamespace from pg_proc p
      union all select t.tgname::text, c.relnamespace from pg_trigger t join pg_class c on c.oid = t.tgrelid where not t.tgisinternal
      union all select r.rulename::text, c.relnamespace from pg_rewrite r join pg_class c on c.oid = r.ev_class
    ) found where space in ('public'::regnamespace, 'identity'::regnamespace)`,
  'nothing is granted to everybody': `
    select broken from (
      select c.oid::regclass::text as broken from pg_class c, aclexplode(c.relacl) g where g.grantee = 0
        and c.relnamespace in ('public'::regnamespace, 'identity'::regnamespace)
      union all select a.attrelid::regclass::text from pg_attribute a, aclexplode(a.attacl) g where g.grantee = 0
        and a.attrelid in (select oid from pg_class where relnamespace in ('public'::regnamespace, 'identity'::regnamespace))
      union all select n.nspname from pg_namespace n, aclexplode(n.nspacl) g
        where g.grantee = 0 and n.nspname in ('public', 'identity')
      union all select d.datname from pg_database d,
        aclexplode(coalesce(d.datacl, acldefault('d', d.datdba))) g where g.grantee = 0 and d.datname = current_database()
    ) found`,
  'the runtime roles are not strong, own nothing and create nothing': `
    select r.rolname as broken from (values ${RUNTIME}) v (name) join pg_roles r on r.rolname = v.name
    where r.rolsuper or r.rolbypassrls or r.rolcreaterole or r.rolcreatedb or r.rolreplication
      or exists (select from pg_class c where c.relowner = r.oid)
      or exists (select from pg_auth_members m where m.member = r.oid)
      or has_schema_privilege(r.oid, 'public', 'create') or has_schema_privilege(r.oid, 'pg_catalog', 'create')
      or has_database_privilege(r.oid, current_database(), 'create') or has_database_privilege(r.oid, current_database(), 'temporary')`,
  'the runtime roles make, read and change no large object': `
    select v.name || ' ' || p.oid::regprocedure::text as broken from (values ${RUNTIME}) v (name), pg_proc p
    where p.pronamespace = 'pg_catalog'::regnamespace and p.proname ~ '^lo(_.*|read|write)$'
      and has_function_privilege(v.name, p.oid, 'execute')`,
  'the runtime roles cannot truncate, reference or trigger': `
    select c.relname || ' ' || v.name as broken from (values ${RUNTIME}) v (name), pg_class c
    where c.relkind = 'r' and c.relnamespace in ('public'::regnamespace, 'identity'::regnamespace)
      and has_table_privilege(v.name, c.oid, 'truncate, references, trigger')`,
  'only the identity role reaches sign-in, and it reaches nothing else': `
    select v.name || ' ' || c.oid::regclass::text as broken from (values ${RUNTIME}) v (name), pg_class c
    where c.relkind = 'r' and c.relnamespace in ('public'::regnamespace, 'identity'::regnamespace)
      and (c.relnamespace = 'identity'::regnamespace) <> (v.name = 'espalier_identity')
      and has_any_column_privilege(v.name, c.oid, 'select, insert, update')`,
  'each foreign key between club tables carries club_id, first on both sides': `
    select k.conname::text as broken from pg_constraint k
    where k.contype = 'f' and k.connamespace = 'public'::regnamespace and not (
      exists (select from pg_attribute a where a.attrelid = k.conrelid and a.attnum = k.conkey[1] and a.attname = 'club_id')
      and exists (select from pg_attribute a where a.attrelid = k.confrelid and a.attnum = k.confkey[1] and a.attname = 'club_id'))`,
  'no foreign key acts by itself': `
    select k.conname::text as broken from pg_constraint k
    where k.contype = 'f' and k.connamespace = 'public'::regnamespace and (k.confdeltype <> 'a' or k.confupdtype <> 'a')`,
  'every index begins with club_id': `
    select i.indexrelid::regclass::text as broken from pg_index i join (${CLUB_TABLES}) t on t.oid = i.indrelid
    where not exists (select from pg_attribute a where a.attrelid = i.indrelid and a.attnum = i.indkey[0] and a.attname = 'club_id')`,
  'the record book and what is published can only grow': `
    select v.name || ' ' || f.name as broken
    from (values ${RUNTIME}) v (name),
         (values ('ledger_entry'), ('ledger_node'), ('checkpoint'), ('version_signature'), ('pattern_version'), ('adoption'),
                 ('plan'), ('attempt')) f (name)
    where has_any_column_privilege(v.name, f.name, 'update') or has_table_privilege(v.name, f.name, 'delete')`,
  'of the book’s head, a version and a record only the named columns change': `
    select v.name || ' ' || c.relname || '.' || a.attname as broken
    from (values ${RUNTIME}) v (name), pg_attribute a join pg_class c on c.oid = a.attrelid
    where c.relnamespace = 'public'::regnamespace and a.attnum > 0
      and c.relname in ('ledger_head', 'curriculum_version', 'record')
      and (c.relname, a.attname) not in (('ledger_head', 'size'), ('ledger_head', 'peaks'), ('ledger_head', 'root'),
        ('curriculum_version', 'offered'), ('curriculum_version', 'withdrawn_reason'), ('record', 'standing'), ('record', 'confirmed_by'))
      and (has_column_privilege(v.name, c.oid, a.attnum, 'update') or has_table_privilege(v.name, c.oid, 'delete'))`,
} as const satisfies Record<string, string>
