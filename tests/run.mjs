// Runs everything, in two lanes: one without a browser, one with. Installs and builds what is missing first,
// prints the time of each step, and fails when a step takes twice its budget, so that the suite stays fast. Budgets are
// what a step takes while a busy two-core machine runs both lanes; alone each takes about a third.
import { spawn, spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { ensureInstalled } from '../apps/local/install.mjs'

const root = dirname(dirname(fileURLToPath(import.meta.url)))
const reports = mkdtempSync(join(tmpdir(), 'espalier-tests-'))
const bin = (name) => join(root, 'node_modules', '.bin', name)

const unit = (project, budgetSeconds) => ({
  name: project,
  budgetSeconds,
  command: bin('vitest'),
  args: [
    'run',
    '--project',
    project,
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${join(reports, `${project}.json`)}`,
  ],
  report: join(reports, `${project}.json`),
})

const lanes = {
  'without browser': [
    {
      name: 'types',
      budgetSeconds: 300,
      command: bin('turbo'),
      args: ['run', 'check:types', '--output-logs=errors-only'],
    },
    { name: 'types of the tests', budgetSeconds: 150, command: bin('tsc'), args: ['-p', 'tests'] },
    { name: 'lint and format', budgetSeconds: 60, command: bin('biome'), args: ['check', '.'] },
    unit('repo', 60),
    unit('domain', 400),
    unit('web', 200),
    unit('api', 500),
  ],
  'with browser': [
    { name: 'build', budgetSeconds: 300, command: process.execPath, args: ['apps/local/start.mjs', '--build-only'] },
    unit('local', 400),
    {
      name: 'browser',
      budgetSeconds: 500,
      command: bin('playwright'),
      args: ['test', '--reporter=list,json'],
      environment: { PLAYWRIGHT_JSON_OUTPUT_NAME: join(reports, 'browser.json') },
      report: join(reports, 'browser.json'),
    },
  ],
}

function run(step) {
  return new Promise((resolve) => {
    const startedAt = Date.now()
    const output = []
    const child = spawn(step.command, step.args, {
      cwd: root,
      env: {
        ...process.env,
        FORCE_COLOR: '0',
        NEXT_TELEMETRY_DISABLED: '1',
        TURBO_TELEMETRY_DISABLED: '1',
        ...step.environment,
      },
      stdio: ['ignore', 'pipe', 'pipe'],
    })
    child.stdout.on('data', (chunk) => output.push(chunk))
    child.stderr.on('data', (chunk) => output.push(chunk))
    child.on('error', (error) => resolve({ seconds: 0, failed: true, text: String(error) }))
    child.on('close', (code) => {
      const seconds = (Date.now() - startedAt) / 1000
      resolve({
        seconds,
        failed: code !== 0,
        slow: seconds > 2 * step.budgetSeconds,
        text: Buffer.concat(output).toString(),
      })
    })
  })
}

/** Counts of a vitest or Playwright report; a report that ran nothing is a failure, never a pass. */
function countTests(file) {
  const report = JSON.parse(readFileSync(file, 'utf8'))
  if (report.stats)
    return {
      passed: report.stats.expected,
      failed: report.stats.unexpected + report.stats.flaky,
      skipped: report.stats.skipped,
    }
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests,
    skipped: report.numPendingTests + report.numTodoTests,
  }
}

const totals = { passed: 0, failed: 0, skipped: 0 }
let broken = false

async function runLane(name, steps) {
  for (const step of steps) {
    const result = await run(step)
    let counts = null
    if (step.report) {
      counts = existsSync(step.report) ? countTests(step.report) : { passed: 0, failed: 0, skipped: 0 }
      for (const key of Object.keys(totals)) totals[key] += counts[key]
      if (counts.passed === 0) result.failed = true
    }
    const failed = result.failed || result.slow || (counts?.skipped ?? 0) > 0
    if (failed) broken = true
    const verdict = result.failed ? 'FAILED' : result.slow ? 'TOO SLOW' : 'ok'
    console.log(
      `[${name}] ${step.name}: ${verdict}, ${result.seconds.toFixed(1)} s of ${step.budgetSeconds} s${counts ? `, ${counts.passed} tests` : ''}`,
    )
    if (failed) console.log(result.text.split('\n').slice(-250).join('\n'))
    if (result.failed && step.name === 'build') return
  }
}

// The same judgement of what is installed as npm start has, so that neither installs under the other's feet.
await ensureInstalled(root)
// The generated database client is needed by types and tests alike: made once, before the lanes part.
const generated = spawnSync(bin('turbo'), ['run', 'gen', '--output-logs=errors-only'], { cwd: root, stdio: 'inherit' })
if (generated.status !== 0) process.exit(1)
await Promise.all(Object.entries(lanes).map(([name, steps]) => runLane(name, steps)))
rmSync(reports, { recursive: true, force: true })
if (totals.failed === 0 && broken) totals.failed = 1
console.log(`${totals.passed} passed, ${totals.failed} failed, ${totals.skipped} skipped`)
process.exit(broken ? 1 : 0)
