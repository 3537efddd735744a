import { createHash } from 'node:crypto'
import type { Sha256 } from '@espalier/domain/ledger'

/** Node's own SHA-256 for the domain's tree. */
export const nodeSha256: Sha256 = (bytes) => createHash('sha256').update(bytes).digest()
