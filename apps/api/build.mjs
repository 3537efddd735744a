// Bundles each program of the API with the workspace packages inside; packages of others stay where npm put them.
import { existsSync, readFileSync, rmSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

const folder = dirname(fileURLToPath(import.meta.url))
const { dependencies } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'))
const others = Object.keys(dependencies).filter((name) => !name.startsWith('@espalier/'))
const programs = ['main', 'migrate', 'demo', 'club'].map((name) => join(folder, 'src', `${name}.ts`)).filter(existsSync)

rmSync(join(folder, 'dist'), { recursive: true, force: true })
await build({
  entryPoints: programs,
  outdir: join(folder, 'dist'),
  bundle: true,
  splitting: true,
  platform: 'node',
  target: 'node20',
  format: 'esm',
  sourcemap: true,
  external: others.flatMap((name) => [name, `${name}/*`]),
  logLevel: 'warning',
})
