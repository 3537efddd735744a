// Apart from the values they name: the contract needs the names alone, and a phone shall not carry the table for them.

export const PROFILE_IDS = [
  'U8',
  'U9',
  'U10',
  'U11',
  'U12',
  'U13',
  'U14',
  'U15',
  'U16',
  'U17',
  'U18',
  'U19',
  'adult',
] as const
export type ProfileId = (typeof PROFILE_IDS)[number]

export const PROFILE_FIELDS = [
  'topSpeed',
  'acceleration',
  'reaction',
  'receiveTurnLook',
  'firstTouch',
  'oneTouch',
  'carrySpeed',
  'arrivalSpeed',
  'arrivalSpeedIntoSpace',
  'kickSpeedMax',
  'throwSpeedMax',
  'passLengthMax',
  'reach',
] as const
export type ProfileField = (typeof PROFILE_FIELDS)[number]
