import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const root = fileURLToPath(new URL('../../', import.meta.url))

/** Every file git knows or would take in: the rules speak of what could be committed, not of build output. */
export function listProjectFiles(): readonly string[] {
  const listed = execFileSync('git', ['ls-files', '-co', '--exclude-standard'], { cwd: root, encoding: 'utf8' })
  return listed.split('\n').filter((file) => file !== '' && !file.includes('/generated/'))
}

export function readProjectFile(file: string): string {
  return readFileSync(join(root, file), 'utf8')
}

/** Files that people write by hand and read again. */
export function isSource(file: string): boolean {
  return /\.(ts|tsx|mts|mjs|js)$/.test(file)
}

export function isText(file: string): boolean {
  return /\.(ts|tsx|mts|mjs|js|json|md|sql|prisma|yml|yaml|css|sh|html|txt|svg)$/.test(file) || file.startsWith('.ci/')
}
