import type pg from 'pg'
import { describe, expect, test } from 'vitest'
import { makeLoginLookup } from './login-lookups'

const token = (name: string) => Buffer.from(name.padEnd(32))

/** A database that answers when it is told to, from the logins that live at that moment. */
function slowIdentity(living: Set<string>) {
  const asked: string[][] = []
  const waiting: (() => void)[] = []
  const query = (statement: { values: [Buffer[]] }) => {
    const tokens = statement.values[0].map((hash) => hash.toString().trim())
    asked.push(tokens)
    return new Promise((resolve) => {
      waiting.push(() => {
        const found = tokens.filter((each) => living.has(each))
        resolve({
          rows: found.map((each) => ({ token: token(each).toString('hex'), account_id: each, keep_until: null })),
        })
      })
    })
  }
  const answer = async () => {
    waiting.shift()?.()
    await new Promise((done) => setImmediate(done))
  }
  return { pool: { query } as unknown as pg.Pool, asked, answer }
}

describe('logins looked up together', () => {
  test('are asked for in one statement by all who came while the one before was under way', async () => {
    const { pool, asked, answer } = slowIdentity(new Set(['a', 'b', 'c']))
    const find = makeLoginLookup(pool, () => 0)
    const found = Promise.all(['a', 'b', 'x', 'c'].map((each) => find(token(each))))
    await answer()
    await answer()
    expect((await found).map((login) => login?.accountId ?? null)).toEqual(['a', 'b', null, 'c'])
    expect(asked).toEqual([['a'], ['b', 'x', 'c']])
  })

  test('are never an answer from before the request: whoever signed out meanwhile is not found', async () => {
    const living = new Set(['a'])
    const { pool, asked, answer } = slowIdentity(living)
    const find = makeLoginLookup(pool, () => 0)
    const before = find(token('a'))
    await answer()
    expect((await before)?.accountId).toBe('a')
    living.delete('a')
    const after = find(token('a'))
    await answer()
    expect(await after).toBeNull()
    expect(asked).toEqual([['a'], ['a']])
  })

  test('fail together where the database cannot say, and are asked for anew by the next', async () => {
    let broken = true
    const { pool, answer } = slowIdentity(new Set(['a']))
    const failing = {
      query: (statement: never) => (broken ? Promise.reject(new Error('gone')) : pool.query(statement)),
    } as unknown as pg.Pool
    const find = makeLoginLookup(failing, () => 0)
    const results = await Promise.allSettled([find(token('a')), find(token('a'))])
    expect(results.map((each) => each.status)).toEqual(['rejected', 'rejected'])
    broken = false
    const next = find(token('a'))
    await answer()
    expect((await next)?.accountId).toBe('a')
  })
})
