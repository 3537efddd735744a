/**
 * The id of the control for a part of a body. A control's name is its place in the body ("roles/0/teamId"), so that a
 * problem's JSON Pointer ("/roles/0/teamId") finds it.
 */
export function fieldId(name: string): string {
  return `field-${name.replaceAll('/', '-')}`
}

/** The id of the control a JSON Pointer speaks of. */
export function fieldIdOfPointer(pointer: string): string {
  return fieldId(pointer.replace(/^\//, '').replaceAll('~1', '/').replaceAll('~0', '~'))
}
