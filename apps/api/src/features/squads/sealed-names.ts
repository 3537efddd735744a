import { createCipheriv, createDecipheriv, createSecretKey, type KeyObject, randomBytes } from 'node:crypto'
import { assert } from '@espalier/domain/quantities'

// A child's name is sealed under a key of its own, and that key under one that is never in the database. Deleting the
// child's key erases the name wherever copies of the row may lie.

const FORM = 1
const IV_BYTES = 12
const TAG_BYTES = 16
const KEY_BYTES = 32

/** Names the child, so that a sealed name moved to another row does not open there. */
export type Subject = { readonly clubId: string; readonly playerId: string }

export type SealedName = { readonly sealed: Buffer; readonly wrappedKey: Buffer }

/** Seals a name under a fresh key. */
export function sealName(nameKey: KeyObject, subject: Subject, name: string): SealedName {
  const key = randomBytes(KEY_BYTES)
  return {
    sealed: encrypt(createSecretKey(key), subject, 'name', Buffer.from(name, 'utf8')),
    wrappedKey: encrypt(nameKey, subject, 'key', key),
  }
}

/** Seals another name under the key that the child has. */
export function resealName(nameKey: KeyObject, subject: Subject, wrappedKey: Buffer, name: string): Buffer {
  return encrypt(unwrapKey(nameKey, subject, wrappedKey), subject, 'name', Buffer.from(name, 'utf8'))
}

export function openName(nameKey: KeyObject, subject: Subject, name: SealedName): string {
  return decrypt(unwrapKey(nameKey, subject, name.wrappedKey), subject, 'name', name.sealed).toString('utf8')
}

function unwrapKey(nameKey: KeyObject, subject: Subject, wrappedKey: Buffer): KeyObject {
  return createSecretKey(decrypt(nameKey, subject, 'key', wrappedKey))
}

function encrypt(key: KeyObject, subject: Subject, purpose: string, plain: Buffer): Buffer {
  const iv = randomBytes(IV_BYTES)
  const cipher = createCipheriv('aes-256-gcm', key, iv, { authTagLength: TAG_BYTES })
  cipher.setAAD(boundTo(subject, purpose))
  const text = Buffer.concat([cipher.update(plain), cipher.final()])
  return Buffer.concat([Buffer.from([FORM]), iv, cipher.getAuthTag(), text])
}

function decrypt(key: KeyObject, subject: Subject, purpose: string, sealed: Buffer): Buffer {
  assert(sealed[0] === FORM, 'a sealed name has a known form')
  const iv = sealed.subarray(1, 1 + IV_BYTES)
  const tag = sealed.subarray(1 + IV_BYTES, 1 + IV_BYTES + TAG_BYTES)
  const decipher = createDecipheriv('aes-256-gcm', key, iv, { authTagLength: TAG_BYTES })
  decipher.setAAD(boundTo(subject, purpose))
  decipher.setAuthTag(tag)
  return Buffer.concat([decipher.update(sealed.subarray(1 + IV_BYTES + TAG_BYTES)), decipher.final()])
}

function boundTo(subject: Subject, purpose: string): Buffer {
  return Buffer.from(`${purpose}\n${subject.clubId}\n${subject.playerId}`, 'utf8')
}
