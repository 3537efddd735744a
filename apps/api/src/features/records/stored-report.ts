import { instantText, line, uuid } from '@espalier/contract/quantities'
import { reportBody } from '@espalier/contract/records'
import * as z from 'zod/mini'

const { stages, changes } = reportBody.shape

/** What a report says beside its columns: as the coach sent it, with the phone's own clock for information. */
export const storedReport = z.strictObject({
  v: z.literal(1),
  stages,
  changes,
  secondAdult: z.nullable(uuid),
  deviceAt: instantText,
  zone: line(60),
})
export type StoredReport = z.infer<typeof storedReport>
