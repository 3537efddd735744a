import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { freshDatabase, testDatabase } from '../../../../tests/support/database'
import { withOwner } from '../../../../tests/support/database-cluster'
import { describeCatalogue } from './catalogue'
import { CATALOGUE_RULES } from './catalogue-rules'
import { introspect } from './introspect'
import { renderSchemaView } from './schema-view'

const committed = (name: string) => readFileSync(join(import.meta.dirname, '../../../../prisma', name), 'utf8')

async function brokenBy(ownerUrl: string, rule: keyof typeof CATALOGUE_RULES): Promise<readonly string[]> {
  return withOwner(ownerUrl, async (owner) => {
    const { rows } = await owner.query<{ broken: string }>(CATALOGUE_RULES[rule])
    return rows.map((row) => row.broken)
  })
}

describe('the migrated database', () => {
  test('is what schema.prisma says: columns, types, keys and foreign keys', async () => {
    const { ownerUrl } = await testDatabase()
    const view = renderSchemaView(await withOwner(ownerUrl, introspect))
    expect(view).toBe(committed('schema.prisma'))
  })

  test('is what catalogue.txt says: constraints, indexes, policies and grants', async () => {
    const { ownerUrl } = await testDatabase()
    expect(await withOwner(ownerUrl, describeCatalogue)).toBe(committed('catalogue.txt'))
  })

  test.each(Object.keys(CATALOGUE_RULES) as (keyof typeof CATALOGUE_RULES)[])('%s', async (rule) => {
    const { ownerUrl } = await testDatabase()
    expect(await brokenBy(ownerUrl, rule)).toEqual([])
  })
})

// Each change breaks one rule; a rule that stays silent would be no rule.
const BREAKS = {
  'every table has club_id, first and never null': 'create table stray (id uuid primary key)',
  'row security is on and forced': 'alter table note no force row level security',
  'a restrictive policy for every role and command guards each table': 'drop policy guard on player',
  'each guard names the club of the transaction, and nothing else':
    'alter policy guard on player using (true) with check (true)',
  'each permissive policy is for a named role': 'create policy wide on player using (true) with check (true)',
  'each policy that lets rows in checks them': 'create policy loose on player for update to espalier_app using (true)',
  'no view, definer function, trigger, rule or sequence': 'create view all_players as select * from player',
  'nothing is granted to everybody': 'grant select on club to public',
  'the runtime roles are not strong, own nothing and create nothing': 'grant create on schema public to espalier_app',
  'the runtime roles make, read and change no large object': 'grant execute on function lo_create(oid) to public',
  'the runtime roles cannot truncate, reference or trigger': 'grant truncate on note to espalier_app',
  'only the identity role reaches sign-in, and it reaches nothing else':
    'grant select (token_hash) on identity.login to espalier_app',
  'each foreign key between club tables carries club_id, first on both sides':
    'alter table team add unique (team_id), add column twin uuid references team (team_id)',
  'no foreign key acts by itself':
    'alter table note add foreign key (club_id, subject_id) references player on delete cascade',
  'every index begins with club_id': 'create index by_name on team (name)',
  'the record book and what is published can only grow': 'grant update (body) on ledger_entry to espalier_app',
  'of the book’s head, a version and a record only the named columns change':
    'grant update (content) on curriculum_version to espalier_app',
} as const satisfies Record<keyof typeof CATALOGUE_RULES, string>

describe('a broken database is found', () => {
  test('each rule sees the change that breaks it', async () => {
    const database = await freshDatabase()
    const silent: string[] = []
    for (const [rule, change] of Object.entries(BREAKS) as [keyof typeof BREAKS, string][]) {
      const found = await withOwner(database.ownerUrl, async (owner) => {
        await owner.query('begin')
        await owner.query(change)
        const { rowCount } = await owner.query(CATALOGUE_RULES[rule])
        await owner.query('rollback')
        return rowCount
      })
      if (found === 0) silent.push(rule)
    }
    await database.drop()
    expect(silent).toEqual([])
  })

  test('a column, a type, a key or a foreign key that schema.prisma does not know changes its view', async () => {
    const database = await freshDatabase()
    const changes = [
      'alter table note add column extra text',
      'alter table note alter column text type varchar(9)',
      'alter table note alter column mac drop not null',
      'alter table note add unique (club_id, subject_id)',
      'alter table note add foreign key (club_id, subject_id) references team',
    ]
    const unseen: string[] = []
    for (const change of changes) {
      const view = await withOwner(database.ownerUrl, async (owner) => {
        await owner.query('begin')
        await owner.query(change)
        const text = await introspect(owner)
          .then(renderSchemaView)
          .catch(() => 'no view at all')
        await owner.query('rollback')
        return text
      })
      if (view === committed('schema.prisma')) unseen.push(change)
    }
    await database.drop()
    expect(unseen).toEqual([])
  })
})
