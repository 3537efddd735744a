import type { ProblemCode } from '@espalier/contract/problems'
import { checkShape, type DocumentFaultCode, type PatternDocument } from '@espalier/domain/pattern'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import type { Refusal } from '../../http/problem-error'

const PROBLEM_OF = {
  'formation-count': 'formation-count',
  'position-twice': 'position-twice',
  'position-unknown': 'position-unknown',
  'id-twice': 'identifier-twice',
  'passer-without-ball': 'passer-without-ball',
  'nobody-receives': 'nobody-receives',
  'obstacle-unknown': 'reference-unknown',
  'run-twice': 'bad-request',
  'point-too-long': 'point-too-long',
  'landmark-unknown': 'reference-unknown',
  'look-step-unknown': 'reference-unknown',
  'look-without-exit': 'bad-request',
  'answer-length': 'bad-request',
  'rejoin-unknown': 'reference-unknown',
  'rejoin-without-ball': 'passer-without-ball',
} as const satisfies Record<DocumentFaultCode, ProblemCode>

/** A document with no meaning is refused as a draft too; the problem's code is that of the first fault. */
export function refuseShapeFaults(document: PatternDocument): Result<true, Refusal> {
  const faults = checkShape(document)
  const [first] = faults
  if (first === undefined) return ok(true)
  return refuse({
    code: PROBLEM_OF[first.code],
    errors: faults.map(({ code, pointer, detail }) => ({ pointer: `/document${pointer}`, detail, code })),
  })
}
