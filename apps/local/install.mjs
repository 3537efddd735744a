// Installs packages when there are none, or when the lockfile is another than the one they were installed from.
import { spawn } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

const OLDEST_NODE = [20, 19]

export function refuseOldNode(version) {
  const [major, minor] = version.split('.').map(Number)
  if (major > OLDEST_NODE[0] || (major === OLDEST_NODE[0] && minor >= OLDEST_NODE[1])) return
  throw new Error(`Espalier needs Node ${OLDEST_NODE.join('.')} or newer; this is ${version}.`)
}

export async function ensureInstalled(root) {
  if (isInstalled(root)) return
  console.log('Installing packages (the first time takes a minute or two) …')
  // Build tools are development dependencies, so they are wanted whatever NODE_ENV says.
  await runNpm(root, ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'])
  writeFileSync(stampOf(root), lockHash(root))
}

export function isInstalled(root) {
  if (existsSync(stampOf(root))) return readFileSync(stampOf(root), 'utf8') === lockHash(root)
  // Installed by hand: npm's own note of what it installed is newer than the lockfile.
  const note = join(root, 'node_modules', '.package-lock.json')
  if (!existsSync(note) || statSync(note).mtimeMs < statSync(join(root, 'package-lock.json')).mtimeMs) return false
  writeFileSync(stampOf(root), lockHash(root))
  return true
}

function stampOf(root) {
  return join(root, 'node_modules', '.espalier-lock')
}

function lockHash(root) {
  return createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .digest('hex')
}

function runNpm(root, args) {
  return new Promise((resolve, reject) => {
    // Started through npm, its own program is known; else it is on the path, which on Windows needs a shell.
    const own = process.env.npm_execpath
    const [command, all] = own?.endsWith('.js') ? [process.execPath, [own, ...args]] : ['npm', args]
    const child = spawn(command, all, {
      cwd: root,
      stdio: 'inherit',
      shell: command === 'npm' && process.platform === 'win32',
    })
    child.on('error', () => reject(new Error('npm was not found; install it together with Node.')))
    child.on('exit', (code) => {
      if (code === 0) resolve()
      else reject(new Error(`npm ci ended with ${code}; its message stands above.`))
    })
  })
}
