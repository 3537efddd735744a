// PostgreSQL refuses to run as root. Started by root, as in a container, it runs as a normal user of the machine.
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

/**
 * Who runs the server: null where we are a normal user already.
 * @returns {{ uid: number, gid: number } | null}
 */
export function chooseRunAs(environment = process.env) {
  if (process.getuid?.() !== 0) return null
  const uid = Number(environment.SUDO_UID)
  if (uid > 0) return { uid, gid: Number(environment.SUDO_GID) || uid }
  const known = userNamed('postgres') ?? userNamed('nobody')
  if (!known) throw new Error('PostgreSQL does not run as root, and this machine has no user postgres or nobody')
  return known
}

/** True where that user can enter the folder. */
export function canEnter(folder, runAs) {
  if (runAs === null) return true
  return spawnSync('/bin/sh', ['-c', 'cd "$1"', 'sh', folder], { ...runAs, cwd: '/' }).status === 0
}

/** Where the server's files go when its user cannot enter the folder that was asked for (as below /root). */
export function folderElsewhere(folder) {
  return join('/var/lib/espalier', createHash('sha256').update(folder).digest('hex').slice(0, 16))
}

function userNamed(name) {
  if (!existsSync('/etc/passwd')) return null
  for (const line of readFileSync('/etc/passwd', 'utf8').split('\n')) {
    const [user, , uid, gid] = line.split(':')
    if (user === name) return { uid: Number(uid), gid: Number(gid) }
  }
  return null
}
