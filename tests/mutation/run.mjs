// Breaks the pure code of one folder on purpose, one small change at a time, and counts how many of the changes its tests see.
//   node tests/mutation/run.mjs packages/domain/src/check --sample 200 --seed 1 --minutes 20 --without cover,pressure
// The project is copied aside first, so that nothing anybody works on changes. A mutant that survives the quick tests meets the
// slow ones (property tests); what survives those is printed with its line. Not part of the test run: it takes minutes.
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, relative, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { Worker } from 'node:worker_threads'
import { buildSync } from 'esbuild'
import { listMutants, withMutants } from './mutants.mjs'

const project = resolve(import.meta.dirname, '../..')

function option(name, otherwise) {
  const at = process.argv.indexOf(`--${name}`)
  return at < 0 ? otherwise : process.argv[at + 1]
}

const folder = process.argv[2] ?? 'packages/domain/src/check'
const without = option('without', '').split(',').filter(Boolean)
const sample = Number(option('sample', '200'))
const seed = Number(option('seed', '1'))
const deadline = Date.now() + Number(option('minutes', '20')) * 60_000
/** Longer than all tests together take: a mutant that loops for ever is seen. */
const PATIENCE_MS = 120_000

function listFiles(path) {
  return readdirSync(path).flatMap((name) => {
    const inside = join(path, name)
    return statSync(inside).isDirectory() ? listFiles(inside) : [inside]
  })
}

function copyProject() {
  const copy = mkdtempSync(join(tmpdir(), 'mutation-'))
  cpSync(join(project, 'packages/domain'), join(copy, 'packages/domain'), { recursive: true })
  cpSync(join(project, 'tests/mutation'), join(copy, 'tests/mutation'), { recursive: true })
  symlinkSync(join(project, 'node_modules'), join(copy, 'node_modules'))
  return copy
}

function isLeftOut(name) {
  return without.some((each) => name.startsWith(`${each}/`))
}

function plant(copy) {
  const mutants = []
  for (const path of listFiles(join(copy, folder))) {
    const name = relative(join(copy, folder), path)
    const isSource = name.endsWith('.ts') && !/fixtures|examples|\.test\.|index\.ts/.test(name)
    if (!isSource || isLeftOut(name)) continue
    const text = readFileSync(path, 'utf8')
    const found = listMutants(name, text, mutants.length + 1)
    writeFileSync(path, withMutants(text, found))
    mutants.push(...found)
  }
  return mutants
}

/** The same sample for the same seed: a shuffle driven by a small linear congruence, of which only the high bits are even. */
function choose(mutants) {
  const shuffled = [...mutants]
  let state = seed
  for (let at = shuffled.length - 1; at > 0; at -= 1) {
    state = (state * 69_069 + 12_345) % 4_294_967_296
    const other = Math.floor((state / 4_294_967_296) * (at + 1))
    const kept = shuffled[at]
    shuffled[at] = shuffled[other]
    shuffled[other] = kept
  }
  return shuffled.slice(0, sample)
}

/** These test files and everything they import as one module. */
function bundle(copy, name, tests) {
  const entry = join(copy, `${name}.ts`)
  const out = join(copy, `${name}.mjs`)
  writeFileSync(entry, tests.map((path) => `import ${JSON.stringify(path)}\n`).join(''))
  buildSync({
    entryPoints: [entry],
    outfile: out,
    bundle: true,
    format: 'esm',
    platform: 'node',
    logLevel: 'error',
    // The package says that its modules do nothing when imported; tests do.
    ignoreAnnotations: true,
    alias: { vitest: join(copy, 'tests/mutation/vitest-stand-in.mjs') },
  })
  return pathToFileURL(out).href
}

function passes(href, mutant) {
  return new Promise((settle) => {
    const worker = new Worker(new URL('./judge.mjs', import.meta.url), { workerData: { bundle: href, mutant } })
    const end = (passed) => {
      clearTimeout(timer)
      void worker.terminate()
      settle(passed)
    }
    const timer = setTimeout(() => end(false), PATIENCE_MS)
    worker.on('message', end)
    worker.on('error', () => end(false))
  })
}

async function main() {
  const copy = copyProject()
  try {
    const tests = listFiles(join(copy, folder)).filter(
      (path) => path.endsWith('.test.ts') && !isLeftOut(relative(join(copy, folder), path)),
    )
    const slow = tests.filter((path) => readFileSync(path, 'utf8').includes("from 'fast-check'"))
    const quick = tests.filter((path) => !slow.includes(path))
    const mutants = plant(copy)
    if (quick.length === 0) throw new Error(`no tests in ${folder}`)
    const stages = [bundle(copy, 'quick', quick), bundle(copy, 'slow', slow)]
    for (const stage of stages) {
      if (!(await passes(stage, 0))) throw new Error('the tests fail with every mutant asleep')
    }
    await count(stages, choose(mutants), mutants.length)
  } finally {
    rmSync(copy, { recursive: true, force: true })
  }
}

async function count([quick, slow], chosen, all) {
  let killed = 0
  let tried = 0
  for (const mutant of chosen) {
    if (Date.now() > deadline) break
    tried += 1
    const survives = (await passes(quick, mutant.id)) && (await passes(slow, mutant.id))
    if (!survives) killed += 1
    else console.log(`survives ${mutant.path}:${mutant.line}  ${mutant.was}  →  ${mutant.becomes}`)
  }
  console.log(
    `${killed} of ${tried} killed (${((100 * killed) / tried).toFixed(1)} %), ${all} mutants in all, seed ${seed}`,
  )
}

await main()
