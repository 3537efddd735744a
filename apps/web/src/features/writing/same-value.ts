/** Whether two documents say the same. Both come from one shape and are plain JSON; the order of members is no matter. */
export function sameValue(one: unknown, other: unknown): boolean {
  if (one === other) return true
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false
  if (Array.isArray(one) !== Array.isArray(other)) return false
  const names = Object.keys(one)
  if (names.length !== Object.keys(other).length) return false
  const left = one as Readonly<Record<string, unknown>>
  const right = other as Readonly<Record<string, unknown>>
  return names.every((name) => Object.hasOwn(right, name) && sameValue(left[name], right[name]))
}
