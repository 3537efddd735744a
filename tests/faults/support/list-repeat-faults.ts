import type pg from 'pg'
import { freshId } from '../../support/database'

/** What came of one sending: its effect, the same effect told again, or a refusal. */
export type Told = {
  readonly kind: 'applied' | 'replayed' | 'refused'
  /** The problem's code; null where nothing was refused. */
  readonly code: string | null
  /** Ids, version and entry, as text to compare. */
  readonly answer: string
}

/** One command that may be sent under any key, with a body that has not been sent before and another one. */
export type Repeatable = {
  readonly send: (key: string) => Promise<Told>
  readonly sendOther: (key: string) => Promise<Told>
}

const AT_ONCE = 5

/**
 * Sends one command twice, then another one five times at once, then a third against a rival with its key, and looks into
 * every table of the club. Empty where each had one effect and every answer was the same; else what went wrong, in words.
 */
export async function listRepeatFaults(
  owner: pg.Client,
  clubId: string,
  make: () => Promise<Repeatable>,
): Promise<readonly string[]> {
  const faults: string[] = []
  await sendTwice(owner, clubId, await make(), faults)
  await sendAtOnce(owner, clubId, await make(), faults)
  await sendRivals(owner, clubId, await make(), faults)
  return faults
}

async function sendTwice(owner: pg.Client, clubId: string, command: Repeatable, faults: string[]): Promise<void> {
  const key = freshId()
  const untouched = await lookInto(owner, clubId)
  const first = await command.send(key)
  if (first.kind !== 'applied') faults.push(`the first sending was ${first.kind}: ${first.code}`)
  const done = await lookInto(owner, clubId)
  if (listWriters(untouched, done).length !== 1) faults.push('the first sending left no effect')

  const second = await command.send(key)
  if (second.kind !== 'replayed') faults.push(`the second sending was ${second.kind}: ${second.code}`)
  if (second.answer !== first.answer) faults.push(`the second answer was ${second.answer}, not ${first.answer}`)
  if (contentOf(await lookInto(owner, clubId)) !== contentOf(done)) faults.push('the second sending had an effect')

  const other = await command.sendOther(key)
  if (other.code !== 'key-used-for-another-command') faults.push(`another body was ${other.kind}: ${other.code}`)
  if (contentOf(await lookInto(owner, clubId)) !== contentOf(done)) faults.push('another body had an effect')
}

async function sendAtOnce(owner: pg.Client, clubId: string, command: Repeatable, faults: string[]): Promise<void> {
  const key = freshId()
  const before = await lookInto(owner, clubId)
  const all = await Promise.all(Array.from({ length: AT_ONCE }, () => command.send(key)))
  const kinds = all.map(({ kind, code }) => code ?? kind).sort()
  const expected = ['applied', ...Array.from({ length: AT_ONCE - 1 }, () => 'replayed')]
  if (kinds.join() !== expected.join()) faults.push(`of five at once: ${kinds.join()}`)
  if (new Set(all.map(({ answer }) => answer)).size !== 1) faults.push('five at once were told different things')
  const writers = listWriters(before, await lookInto(owner, clubId)).length
  if (writers !== 1) faults.push(`five at once had ${writers} effects`)
}

async function sendRivals(owner: pg.Client, clubId: string, command: Repeatable, faults: string[]): Promise<void> {
  const key = freshId()
  const before = await lookInto(owner, clubId)
  const both = await Promise.all([command.send(key), command.sendOther(key)])
  const kinds = both.map(({ kind, code }) => code ?? kind).sort()
  if (kinds.join() !== 'applied,key-used-for-another-command') faults.push(`of two rivals: ${kinds.join()}`)
  const writers = listWriters(before, await lookInto(owner, clubId)).length
  if (writers !== 1) faults.push(`two rivals had ${writers} effects`)
}

type TableLook = { readonly name: string; readonly hash: string | null; readonly writers: readonly string[] | null }

/** The content of every table of the club, and which transactions wrote its rows. What was refused is no effect. */
async function lookInto(owner: pg.Client, clubId: string): Promise<readonly TableLook[]> {
  const tables = await owner.query<{ name: string }>(
    `select c.relname as name from pg_class c join pg_attribute a on a.attrelid = c.oid and a.attname = 'club_id'
     where c.relkind = 'r' and c.relnamespace = 'public'::regnamespace and c.relname <> 'refused' order by 1`,
  )
  const looks = tables.rows.map(
    ({ name }) => `select '${name}' as name, md5(string_agg(t::text, ' ' order by t::text)) as hash,
      array_agg(distinct xmin::text) as writers from ${name} t where club_id = $1`,
  )
  return (await owner.query<TableLook>(looks.join(' union all '), [clubId])).rows
}

function contentOf(looks: readonly TableLook[]): string {
  return looks.map(({ name, hash }) => `${name} ${hash}`).join()
}

/** The transactions that wrote what was not there before: one effect is the work of one transaction. */
function listWriters(before: readonly TableLook[], after: readonly TableLook[]): readonly string[] {
  const known = new Set(before.flatMap(({ writers }) => writers ?? []))
  return [...new Set(after.flatMap(({ writers }) => writers ?? []))].filter((writer) => !known.has(writer))
}
