/** What a document may be refused for at the edge. Codes are never renamed. */
export const DOCUMENT_FAULT_CODES = [
  'formation-count',
  'position-twice',
  'position-unknown',
  'id-twice',
  'passer-without-ball',
  'nobody-receives',
  'obstacle-unknown',
  'run-twice',
  'point-too-long',
  'landmark-unknown',
  'look-step-unknown',
  'look-without-exit',
  'answer-length',
  'rejoin-unknown',
  'rejoin-without-ball',
] as const
export type DocumentFaultCode = (typeof DOCUMENT_FAULT_CODES)[number]

/** A structural fault with the JSON pointer (RFC 6901) of what is wrong. */
export type DocumentFault = {
  readonly code: DocumentFaultCode
  readonly pointer: string
  readonly detail: string
}
