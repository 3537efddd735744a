/** A SHA-256 function: Node's, or `sha256` below where only an asynchronous one is at hand. */
export type Sha256 = (bytes: Uint8Array) => Uint8Array

export const HASH_LENGTH_BYTES = 32

const BLOCK_LENGTH_BYTES = 64
const LENGTH_FIELD_BYTES = 8

// Source: FIPS 180-4 (August 2015), section 4.2.2: the first 32 bits of the fractional parts of the cube roots of the
// first 64 primes.
const ROUND_CONSTANTS = new Uint32Array([
  0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5, 0xd807aa98,
  0x12835b01, 0x243185be, 0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174, 0xe49b69c1, 0xefbe4786,
  0x0fc19dc6, 0x240ca1cc, 0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc, 0x76f988da, 0x983e5152, 0xa831c66d, 0xb00327c8,
  0xbf597fc7, 0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967, 0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13,
  0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85, 0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3, 0xd192e819,
  0xd6990624, 0xf40e3585, 0x106aa070, 0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a,
  0x5b9cca4f, 0x682e6ff3, 0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208, 0x90befffa, 0xa4506ceb, 0xbef9a3f7,
  0xc67178f2,
])

// Source: FIPS 180-4, section 5.3.3: the first 32 bits of the fractional parts of the square roots of the first 8 primes.
const INITIAL_STATE = [
  0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a, 0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19,
] as const

/** SHA-256 of FIPS 180-4 in plain arithmetic: synchronous, so that a page can check a proof while it draws it. */
export const sha256: Sha256 = (bytes) => {
  const state = new Uint32Array(INITIAL_STATE)
  const schedule = new Uint32Array(BLOCK_LENGTH_BYTES)
  const wholeBlocksEnd = bytes.length - (bytes.length % BLOCK_LENGTH_BYTES)
  const message = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  for (let offset = 0; offset < wholeBlocksEnd; offset += BLOCK_LENGTH_BYTES) {
    compress(state, schedule, message, offset)
  }
  const ending = new DataView(paddedEnding(bytes, wholeBlocksEnd).buffer)
  for (let offset = 0; offset < ending.byteLength; offset += BLOCK_LENGTH_BYTES) {
    compress(state, schedule, ending, offset)
  }
  const digest = new DataView(new ArrayBuffer(HASH_LENGTH_BYTES))
  state.forEach((word, place) => {
    digest.setUint32(place * 4, word)
  })
  return new Uint8Array(digest.buffer)
}

/** FIPS 180-4, section 5.1.1: a one bit, zeros, then the message's length in bits as 64 bits. */
function paddedEnding(bytes: Uint8Array, wholeBlocksEnd: number): Uint8Array<ArrayBuffer> {
  const rest = bytes.subarray(wholeBlocksEnd)
  const fits = rest.length + 1 + LENGTH_FIELD_BYTES <= BLOCK_LENGTH_BYTES
  const ending = new Uint8Array(fits ? BLOCK_LENGTH_BYTES : 2 * BLOCK_LENGTH_BYTES)
  ending.set(rest)
  ending[rest.length] = 0x80
  const lengthField = new DataView(ending.buffer, ending.length - LENGTH_FIELD_BYTES)
  // The bit count passes 32 bits at 512 MiB: the two halves are computed apart, exactly.
  lengthField.setUint32(0, Math.floor(bytes.length / 0x20000000))
  lengthField.setUint32(4, (bytes.length % 0x20000000) * 8)
  return ending
}

function rotateRight(word: number, bits: number): number {
  return (word >>> bits) | (word << (32 - bits))
}

/** FIPS 180-4, section 6.2.2, step 1: spreads sixteen words of the block over sixty-four. */
function fillSchedule(w: Uint32Array, block: DataView, offset: number): void {
  for (let t = 0; t < 16; t++) w[t] = block.getUint32(offset + t * 4)
  for (let t = 16; t < 64; t++) {
    const early = w[t - 15]!
    const late = w[t - 2]!
    const sigma0 = rotateRight(early, 7) ^ rotateRight(early, 18) ^ (early >>> 3)
    const sigma1 = rotateRight(late, 17) ^ rotateRight(late, 19) ^ (late >>> 10)
    w[t] = w[t - 16]! + sigma0 + w[t - 7]! + sigma1
  }
}

/** FIPS 180-4, section 6.2.2, steps 2 to 4; the letters are the standard's. */
function compress(state: Uint32Array, w: Uint32Array, block: DataView, offset: number): void {
  fillSchedule(w, block, offset)
  let a = state[0]!
  let b = state[1]!
  let c = state[2]!
  let d = state[3]!
  let e = state[4]!
  let f = state[5]!
  let g = state[6]!
  let h = state[7]!
  for (let t = 0; t < 64; t++) {
    const sum1 = rotateRight(e, 6) ^ rotateRight(e, 11) ^ rotateRight(e, 25)
    const choice = (e & f) ^ (~e & g)
    const t1 = (h + sum1 + choice + ROUND_CONSTANTS[t]! + w[t]!) | 0
    const sum0 = rotateRight(a, 2) ^ rotateRight(a, 13) ^ rotateRight(a, 22)
    const majority = (a & b) ^ (a & c) ^ (b & c)
    const t2 = (sum0 + majority) | 0
    h = g
    g = f
    f = e
    e = (d + t1) | 0
    d = c
    c = b
    b = a
    a = (t1 + t2) | 0
  }
  // A Uint32Array keeps each sum modulo 2^32.
  state[0]! += a
  state[1]! += b
  state[2]! += c
  state[3]! += d
  state[4]! += e
  state[5]! += f
  state[6]! += g
  state[7]! += h
}
