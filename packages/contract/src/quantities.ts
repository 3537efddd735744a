import type {
  Instant,
  LocalDate,
  Metres,
  MetresPerSecond,
  MetresPerSecondSquared,
  Millimetres,
  Minutes,
  Seconds,
} from '@espalier/domain/quantities'
import * as z from 'zod/mini'

// The contract's brands are cast here and nowhere else: a parsed value has met its range.

const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[1-8][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/

/** Lower-case UUID; operations carry version 7 made by the client. Never a secret. */
export const uuid = z.string().check(z.regex(UUID, 'must be a lower-case UUID'))

/** Whole millimetres; a pitch is never longer than 150 m, an offset never more than that. */
export const lengthMm = z.int().check(z.minimum(1), z.maximum(150_000)) as unknown as z.ZodMiniType<Millimetres>
export const offsetMm = z.int().check(z.minimum(-150_000), z.maximum(150_000)) as unknown as z.ZodMiniType<Millimetres>

/** Sides of a practice space: from 5 m, the smallest grid anyone sets out, to 150 m (habit: common practice, no source). */
export const spaceSideMm = z.int().check(z.minimum(5_000), z.maximum(150_000)) as unknown as z.ZodMiniType<Millimetres>

// What the check computes is answered and never asked, so it has no range but that it is a number.
export const metres = z.number() as unknown as z.ZodMiniType<Metres>
export const seconds = z.number() as unknown as z.ZodMiniType<Seconds>
export const metresPerSecond = z.number() as unknown as z.ZodMiniType<MetresPerSecond>
export const metresPerSecondSquared = z.number() as unknown as z.ZodMiniType<MetresPerSecondSquared>

export const minutes = z.int().check(z.minimum(0), z.maximum(600)) as unknown as z.ZodMiniType<Minutes>
export const instantMs = z
  .int()
  .check(z.minimum(0), z.maximum(8_640_000_000_000_000)) as unknown as z.ZodMiniType<Instant>

export const instantText = z
  .string()
  .check(z.regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}\.\d{3}Z$/, 'must be an instant like 2026-09-01T16:30:00.000Z'))

/** A day from 2000 to 2100: an earlier or later year is a slip of the finger. */
export const localDate = z
  .string()
  .check(
    z.regex(
      /^(20\d{2}|2100)-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/,
      'must be a date like 2026-09-01, from 2000 to 2100',
    ),
  ) as unknown as z.ZodMiniType<LocalDate>

export const localTime = z.string().check(z.regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'must be a time like 17:30'))

/** SHA-256 as 64 lower-case hexadecimal digits. */
export const sha256Hex = z.string().check(z.regex(/^[0-9a-f]{64}$/, 'must be a SHA-256 in hexadecimal'))
/** 256 random bits as base64url without padding. */
export const secret = z.string().check(z.regex(/^[A-Za-z0-9_-]{43}$/, 'must be 256 bits in base64url'))

/** One line of text as people write it: no control characters, no leading or trailing space. */
export function line(longest: number, shortest = 1) {
  return z
    .string()
    .check(
      z.minLength(shortest),
      z.maxLength(longest),
      z.regex(/^(?!\s)[^\p{Cc}\p{Cs}]*(?<!\s)$/u, 'must be one line without spaces at its ends'),
    )
}

export const teamSize = z.int().check(z.minimum(0), z.maximum(60))
export const positionCode = z.string().check(z.regex(/^[A-Z][A-Z0-9]{0,3}$/, 'must be a position like GK, LCB or CM'))
