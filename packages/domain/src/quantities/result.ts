/** An expected refusal is a value with a code; it never travels as an exception. */
export type Result<Value, Refusal extends { readonly code: string }> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly refusal: Refusal }

export function ok<Value>(value: Value): { readonly ok: true; readonly value: Value } {
  return { ok: true, value }
}

export function refuse<const Refusal extends { readonly code: string }>(
  refusal: Refusal,
): { readonly ok: false; readonly refusal: Refusal } {
  return { ok: false, refusal }
}
