// npm start: everything on one machine. Until packages are installed this file may import only what Node brings.
import { dirname, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { ensureInstalled, refuseOldNode } from './install.mjs'
import { readArguments } from './read-arguments.mjs'

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))))

try {
  refuseOldNode(process.versions.node)
  const wish = readArguments(process.argv.slice(2), process.env)
  await ensureInstalled(root)
  const folder = resolve(wish.folder ?? join(root, '.data'))
  // Before the build, which would change what a running one is made of.
  if (!wish.buildOnly) await (await import('./running.mjs')).refuseSecondStart(folder)
  const { ensureBuilt } = await import('./build.mjs')
  await ensureBuilt(root, wish.development ? ['client', 'api'] : ['client', 'api', 'web'])
  if (!wish.buildOnly) await (await import('./launch.mjs')).launch({ root, ...wish, folder })
} catch (error) {
  console.error(`\n${error.message}`)
  process.exitCode = 1
}
