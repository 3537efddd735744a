// Runs the benchmarks one after another, each in its own process, and relays their lines: one JSON object a figure.
//   npm run bench              all
//   npm run bench -- lineups   those whose file name begins so
// Never beside a test lane: both want the same cores. Ends with 1 when a file fails, prints no figure or none matches.
import { spawn } from 'node:child_process'
import { readdirSync } from 'node:fs'
import { createInterface } from 'node:readline'
import { fileURLToPath } from 'node:url'

const FIELDS = ['figure', 'value', 'unit', 'floor', 'ratio', 'goal']
const folder = fileURLToPath(new URL('.', import.meta.url))
const prefix = process.argv[2] ?? ''
const files = readdirSync(folder)
  .filter((name) => name.endsWith('.bench.ts') && name.startsWith(prefix))
  .sort()

function isFigure(line) {
  try {
    const figure = JSON.parse(line)
    return FIELDS.every((field) => field in figure)
  } catch {
    return false
  }
}

function run(file) {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, ['--import', 'tsx', `${folder}${file}`], {
      stdio: ['ignore', 'pipe', 'inherit'],
    })
    let figures = 0
    let broken = 0
    createInterface({ input: child.stdout }).on('line', (line) => {
      if (isFigure(line)) figures++
      else broken++
      process.stdout.write(`${line}\n`)
    })
    child.on('error', () => resolve(`${file} did not start`))
    child.on('close', (code) => {
      if (code !== 0) resolve(`${file} ended with ${code}`)
      else if (figures === 0) resolve(`${file} printed no figure`)
      else resolve(broken > 0 ? `${file} printed ${broken} lines that are not figures` : null)
    })
  })
}

const failures = files.length === 0 ? [`no benchmark begins with "${prefix}"`] : []
for (const file of files) {
  const failure = await run(file)
  if (failure !== null) failures.push(failure)
}
for (const failure of failures) process.stderr.write(`${failure}\n`)
process.exitCode = failures.length > 0 ? 1 : 0
