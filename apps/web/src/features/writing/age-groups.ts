/** Age groups a form offers, youngest first. */
export const AGE_GROUPS = [
  'U6',
  'U7',
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
