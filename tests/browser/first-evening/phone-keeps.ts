import { expect, type Page } from '@playwright/test'

/** Everything that the phone pages keep in this browser, shelf by shelf, as text. */
export function phoneKeeps(page: Page): Promise<Readonly<Record<string, string>>> {
  return page.evaluate(async () => {
    const answered = <Value>(request: IDBRequest<Value>) =>
      new Promise<Value>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result)
        request.onerror = () => reject(request.error)
      })
    const database = await answered(indexedDB.open('espalier'))
    const shelves: Record<string, string> = {}
    for (const name of database.objectStoreNames) {
      const values = await answered(database.transaction(name).objectStore(name).getAll())
      shelves[name] = values.length === 0 ? '' : JSON.stringify(values)
    }
    database.close()
    return shelves
  })
}

/** Makes every kit on this phone look as if the club had last been heard of so many days ago. */
export function ageKits(page: Page, days: number): Promise<void> {
  return page.evaluate(async (back) => {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('espalier')
      request.onsuccess = () => resolve(request.result)
      request.onerror = () => reject(request.error)
    })
    const transaction = database.transaction('kits', 'readwrite')
    const reading = transaction.objectStore('kits').openCursor()
    await new Promise<void>((resolve, reject) => {
      transaction.oncomplete = () => resolve()
      transaction.onerror = () => reject(transaction.error)
      reading.onsuccess = () => {
        const at = reading.result
        if (at === null) return
        at.update({ ...at.value, keptAt: Date.now() - back * 86_400_000 })
        at.continue()
      }
    })
    database.close()
  }, days)
}

/** No name of a child may stand on the page or lie on the phone: not with the kits, the ticks or what waits to be sent. */
export async function expectNoNames(page: Page, names: readonly string[]): Promise<void> {
  const kept = Object.values(await phoneKeeps(page)).join('\n')
  const shown = await shownOn(page)
  expect(names.filter((name) => wordOf(name).test(kept))).toEqual([])
  expect(names.filter((name) => wordOf(name).test(shown))).toEqual([])
}

/** The control of the check above: it sees names where they are meant to be. */
export async function expectNamesKept(page: Page, names: readonly string[]): Promise<void> {
  await expect(async () => {
    const { kits = '' } = await phoneKeeps(page)
    expect(names.filter((name) => !wordOf(name).test(kits))).toEqual([])
    const shown = await shownOn(page)
    expect(names.filter((name) => !wordOf(name).test(shown))).toEqual([])
  }).toPass({ timeout: 10_000 })
}

function shownOn(page: Page): Promise<string> {
  // biome-ignore lint/performance/useDomNodeTextContent: what is shown is asked, line by line; scripts are not shown.
  return page.evaluate(() => document.body.innerText)
}

/** The name alone: other words may begin with it. */
function wordOf(name: string): RegExp {
  return new RegExp(`\\b${name}\\b`)
}
