import { PROFILE_IDS } from '@espalier/domain/check'

/** Age groups a form offers, youngest first; those too young for a profile are checked with the youngest. */
export const AGE_GROUPS = ['U6', 'U7', ...PROFILE_IDS] as const
