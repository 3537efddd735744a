import { createCipheriv, createDecipheriv, randomBytes } from 'node:crypto'
import { assert } from '@espalier/domain/quantities'

// A child's name is sealed under a key of that child alone, and that key under one that is never in the database:
// deleting the child's key erases the name everywhere, in backups too. AES-256-GCM with a random 96-bit nonce; layout
// version (1 byte), nonce (12), tag (16), text. The ids are authenticated, so a sealed value opens only in its own row.

const VERSION = 1
const NONCE_BYTES = 12
const TAG_BYTES = 16
const KEY_BYTES = 32

export type SubjectId = { readonly clubId: string; readonly playerId: string }

/** A new key for one child, wrapped for the table subject_key. */
export function createSubjectKey(
  keyEncryptionKey: Buffer,
  id: SubjectId,
): { readonly key: Buffer; readonly wrapped: Buffer } {
  const key = randomBytes(KEY_BYTES)
  return { key, wrapped: seal(keyEncryptionKey, key, purpose('key', id)) }
}

export function openSubjectKey(keyEncryptionKey: Buffer, wrapped: Uint8Array, id: SubjectId): Buffer {
  return open(keyEncryptionKey, wrapped, purpose('key', id))
}

export function sealName(key: Buffer, name: string, id: SubjectId): Buffer {
  return seal(key, Buffer.from(name, 'utf8'), purpose('name', id))
}

/** Throws where the sealed bytes were altered, or belong to another child. */
export function openName(key: Buffer, sealed: Uint8Array, id: SubjectId): string {
  return open(key, sealed, purpose('name', id)).toString('utf8')
}

function purpose(what: 'key' | 'name', { clubId, playerId }: SubjectId): Buffer {
  return Buffer.from(`${what}:${clubId}:${playerId}`, 'utf8')
}

function seal(key: Buffer, plain: Buffer, about: Buffer): Buffer {
  assert(key.length === KEY_BYTES, 'a key has 32 bytes')
  const nonce = randomBytes(NONCE_BYTES)
  const cipher = createCipheriv('aes-256-gcm', key, nonce, { authTagLength: TAG_BYTES }).setAAD(about)
  const text = Buffer.concat([cipher.update(plain), cipher.final()])
  return Buffer.concat([Buffer.of(VERSION), nonce, cipher.getAuthTag(), text])
}

function open(key: Buffer, sealed: Uint8Array, about: Buffer): Buffer {
  const bytes = Buffer.from(sealed)
  assert(bytes[0] === VERSION, 'sealed bytes of an unknown layout')
  const nonce = bytes.subarray(1, 1 + NONCE_BYTES)
  const tag = bytes.subarray(1 + NONCE_BYTES, 1 + NONCE_BYTES + TAG_BYTES)
  const decipher = createDecipheriv('aes-256-gcm', key, nonce, { authTagLength: TAG_BYTES })
    .setAAD(about)
    .setAuthTag(tag)
  return Buffer.concat([decipher.update(bytes.subarray(1 + NONCE_BYTES + TAG_BYTES)), decipher.final()])
}
