// Bundles each program of the API with the workspace packages inside; packages of others stay where npm put them.
// Into dist, or into the folder named by the first argument, which has to lie in this one too.
import { existsSync, readFileSync, rmSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

const folder = dirname(fileURLToPath(import.meta.url))
const { dependencies } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'))
const others = Object.keys(dependencies).filter((name) => !name.startsWith('@espalier/'))
const programs = ['main', 'migrate', 'demo', 'club'].map((name) => [name, join(folder, 'src', `${name}.ts`)])
// Threads are started by the name of their file, beside the programs.
const threads = ['check-worker'].map((name) => [name, join(folder, 'src', 'workers', `${name}.ts`)])

const outdir = join(folder, process.argv[2] ?? 'dist')

rmSync(outdir, { recursive: true, force: true })
await build({
  entryPoints: Object.fromEntries([...programs.filter(([, file]) => existsSync(file)), ...threads]),
  outdir,
  bundle: true,
  splitting: true,
  platform: 'node',
  target: 'node20',
  format: 'esm',
  sourcemap: true,
  external: others.flatMap((name) => [name, `${name}/*`]),
  logLevel: 'warning',
})
