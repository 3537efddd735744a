import { millimetres } from '@espalier/domain/quantities'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { wallOnTheRight } from '../../../../prisma/demo/patterns'
import { NOTHING_MORE, PITCH, reportText, taskOfRuns } from '../../../../tests/factories/checks'
import { CHECK_POOL_LIMITS, type CheckPool, type CheckPoolLimits, makeCheckPool } from './check-pool'

vi.setConfig({ testTimeout: 120_000 })

const SHORT = { document: wallOnTheRight, space: PITCH, options: NOTHING_MORE }
const SHORT_TEXT = reportText(wallOnTheRight, PITCH, NOTHING_MORE)
/** As many as one call plays of this document; a share of them says how long all would take. */
const MANY = 320_000
const SHARE = 20

// A thread reads TypeScript here, and starts late on a busy machine.
const PATIENT = { ...CHECK_POOL_LIMITS, threads: 1, waitMilliseconds: 60_000, runMilliseconds: 60_000 }

let pool: CheckPool
afterEach(() => pool.close())
function open(changed: Partial<CheckPoolLimits> = {}): void {
  pool = makeCheckPool({ ...PATIENT, ...changed })
}

const nobodyHangsUp = () => new AbortController().signal

async function timed(work: () => Promise<unknown>): Promise<number> {
  const from = performance.now()
  await work()
  return performance.now() - from
}

describe('the threads that check', () => {
  test('write the very text that the domain gives in this thread', async () => {
    open()
    expect(await pool.run(SHORT, nobodyHangsUp())).toEqual({ ok: true, value: SHORT_TEXT })
  })

  test('two at once have their own answers, in one thread or in two', async () => {
    for (const threads of [1, 2]) {
      open({ threads })
      const [one, other] = await Promise.all([
        pool.run(SHORT, nobodyHangsUp()),
        pool.run(taskOfRuns(1000), nobodyHangsUp()),
      ])
      expect(one).toEqual({ ok: true, value: SHORT_TEXT })
      expect(other.ok && JSON.parse(other.value).errorRuns.runs).toBe(1000)
      await pool.close()
    }
  })

  test('are free again once somebody hangs up, long before their check would have ended', async () => {
    open()
    await pool.run(SHORT, nobodyHangsUp())
    const share = await timed(() => pool.run(taskOfRuns(MANY / SHARE), nobodyHangsUp()))
    const asker = new AbortController()
    const long = pool.run(taskOfRuns(MANY), asker.signal)
    const next = timed(() => pool.run(SHORT, nobodyHangsUp()))
    asker.abort()
    expect(await long).toEqual({ ok: false, refusal: { code: 'hung-up' } })
    expect(await next).toBeLessThan((share * SHARE) / 2)
  })

  test('control: nobody hung up, and the next one waits for the whole check', async () => {
    open()
    await pool.run(SHORT, nobodyHangsUp())
    const share = await timed(() => pool.run(taskOfRuns(MANY / SHARE), nobodyHangsUp()))
    const long = pool.run(taskOfRuns(MANY / 4), nobodyHangsUp())
    const next = await timed(() => pool.run(SHORT, nobodyHangsUp()))
    expect((await long).ok).toBe(true)
    expect(next).toBeGreaterThan((share * SHARE) / 4 / 3)
  })

  test('whoever hangs up while waiting takes no turn', async () => {
    open({ waitingMax: 1 })
    const [first, second] = [new AbortController(), new AbortController()]
    const running = pool.run(taskOfRuns(MANY), first.signal)
    const waiting = pool.run(SHORT, second.signal)
    second.abort()
    expect(await waiting).toEqual({ ok: false, refusal: { code: 'hung-up' } })
    first.abort()
    await running
    expect((await pool.run(SHORT, nobodyHangsUp())).ok).toBe(true)
  })

  test('refuse at once what finds no room to wait, and have room again afterwards', async () => {
    open({ waitingMax: 1 })
    const askers = [new AbortController(), new AbortController()]
    const taken = askers.map(({ signal }) => pool.run(taskOfRuns(MANY), signal))
    expect(await pool.run(SHORT, nobodyHangsUp())).toEqual({ ok: false, refusal: { code: 'busy' } })
    for (const asker of askers) asker.abort()
    await Promise.all(taken)
    expect((await pool.run(SHORT, nobodyHangsUp())).ok).toBe(true)
  })

  test('say that they are busy to whoever has waited long enough', async () => {
    open({ waitMilliseconds: 400 })
    await expect.poll(async () => (await pool.run(SHORT, nobodyHangsUp())).ok, { timeout: 60_000 }).toBe(true)
    const asker = new AbortController()
    const long = pool.run(taskOfRuns(MANY), asker.signal)
    expect(await pool.run(SHORT, nobodyHangsUp())).toEqual({ ok: false, refusal: { code: 'busy' } })
    asker.abort()
    expect(await long).toEqual({ ok: false, refusal: { code: 'hung-up' } })
  })

  test('end what takes longer than one check may, and go on with the next', async () => {
    open({ runMilliseconds: 200 })
    expect(await pool.run(taskOfRuns(MANY), nobodyHangsUp())).toEqual({ ok: false, refusal: { code: 'too-long' } })
    await expect.poll(async () => (await pool.run(SHORT, nobodyHangsUp())).ok, { timeout: 60_000 }).toBe(true)
  })

  test('end what takes more memory than one check may, and go on with the next', async () => {
    open({ memoryMegabytes: 20 })
    const space = { ...PITCH, lengthMm: millimetres(150_000), widthMm: millimetres(150_000) }
    const looks = Array.from({ length: 6 }, (_, index) => ({ ...wallOnTheRight.looks[0]!, lookId: `l${index}` }))
    const large = { document: { ...wallOnTheRight, looks }, space, options: { ...NOTHING_MORE, looks: true } }
    const end = await pool.run(large, nobodyHangsUp())
    expect(end.ok ? 'answered' : end.refusal.code).toBe('too-large')
    expect(await pool.run(SHORT, nobodyHangsUp())).toEqual({ ok: true, value: SHORT_TEXT })
  })

  test('hand back why error runs are refused', async () => {
    open()
    const refused = await pool.run(taskOfRuns(2_000_000), nobodyHangsUp())
    expect(refused).toMatchObject({ ok: false, refusal: { code: 'runs-out-of-range' } })
  })
})
