/** Ids of the examples: readable, valid, and nobody's. */
const id = (last: number) => `01900000-0000-7000-8000-${last.toString(16).padStart(12, '0')}`

export const ids = {
  season: id(1),
  team: id(2),
  space: id(3),
  slot: id(4),
  store: id(5),
  coach: id(6),
  link: id(7),
  squad: id(8),
  children: [id(0x11), id(0x12), id(0x13)] as const,
  pattern: id(0x20),
  curriculum: id(0x21),
  progression: id(0x22),
  stage: id(0x23),
  modelSession: id(0x24),
  activity: id(0x25),
  publication: id(0x26),
  adoption: id(0x27),
  attendance: id(0x30),
  report: id(0x31),
  date: id(0x32),
} as const
