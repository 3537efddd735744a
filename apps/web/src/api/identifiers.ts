/**
 * A UUID version 7 (RFC 9562, section 5.7): 48 bits of milliseconds, the rest random.
 * It names an operation and orders it roughly by time; it is never a secret.
 */
export function newUuid(nowMilliseconds: number = Date.now()): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16))
  new DataView(bytes.buffer).setUint32(0, Math.floor(nowMilliseconds / 0x1_0000))
  new DataView(bytes.buffer).setUint16(4, nowMilliseconds % 0x1_0000)
  bytes[6] = 0x70 | ((bytes[6] ?? 0) & 0x0f)
  bytes[8] = 0x80 | ((bytes[8] ?? 0) & 0x3f)
  const digits = hexadecimal(bytes)
  return [digits.slice(0, 8), digits.slice(8, 12), digits.slice(12, 16), digits.slice(16, 20), digits.slice(20)].join(
    '-',
  )
}

/** 256 random bits as base64url without padding: the token of a sign-in link. */
export function newSecret(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(32))
  return btoa(String.fromCharCode(...bytes))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replaceAll('=', '')
}

/** SHA-256 of a text's UTF-8 bytes, as 64 hexadecimal digits: all the server ever learns of a new link. */
export async function sha256Hex(text: string): Promise<string> {
  return hexadecimal(new Uint8Array(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text))))
}

function hexadecimal(bytes: Uint8Array): string {
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('')
}
