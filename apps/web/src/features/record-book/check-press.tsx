'use client'

import { type LedgerInclusion, ledgerConsistency, ledgerInclusion } from '@espalier/contract/ledger'
import { paths, pathTo } from '@espalier/contract/paths'
import { useState } from 'react'
import { readInBrowser } from '../../api/browser'
import { ledgerMessage } from '../../messages/ledger'
import { Button } from '../../ui/button/button'
import { type CheckFailure, checkLine, type LineCheck, type ShownHead } from './check-line'
import { ProofPath } from './proof-path'

type CheckPressProps = {
  readonly clubId: string
  readonly entryId: string
  /** The line's number as people count: from 1. */
  readonly line: number
  readonly head: ShownHead
}

type Checked = { readonly check: LineCheck; readonly proof: LedgerInclusion }

/** Checks a line in this browser, against the head that this page shows. */
export function CheckPress({ clubId, entryId, line, head }: CheckPressProps) {
  const [state, setState] = useState<'idle' | 'checking' | 'no-answer'>('idle')
  const [checked, setChecked] = useState<Checked | null>(null)

  async function check() {
    if (state === 'checking') return
    setState('checking')
    setChecked(null)
    const found = await askAndCheck(clubId, entryId, head)
    setState(found === null ? 'no-answer' : 'idle')
    setChecked(found)
  }

  return (
    <div className="flex flex-col items-start gap-3">
      <Button onClick={check} aria-label={`${ledgerMessage('checkPress')}: ${line}`}>
        {ledgerMessage(state === 'checking' ? 'checking' : checked === null ? 'checkPress' : 'checkAgain')}
      </Button>
      <div role="status" className="max-w-text">
        {state === 'no-answer' && <p>{ledgerMessage('noAnswer')}</p>}
        {checked !== null && <Verdict checked={checked} head={head} line={line} />}
      </div>
      {checked?.check.holds === true && <ProofPath proof={checked.proof} />}
    </div>
  )
}

const REASONS = {
  text: 'reasonText',
  path: 'reasonPath',
  consistency: 'reasonConsistency',
  other: 'reasonOther',
} as const satisfies Record<CheckFailure, string>

type VerdictProps = { readonly checked: Checked; readonly head: ShownHead; readonly line: number }

function Verdict({ checked: { check, proof }, head, line }: VerdictProps) {
  if (!check.holds) {
    return (
      <p className="border-l-[7px] border-double border-ink pl-3 font-semibold">
        {ledgerMessage('fails', { reason: ledgerMessage(REASONS[check.because]) })}
      </p>
    )
  }
  return (
    <>
      <p className="font-semibold">{ledgerMessage('holds', { line, size: proof.size })}</p>
      {check.grownTo !== null && <p>{ledgerMessage('grown', { from: head.size, to: check.grownTo })}</p>}
      <p className="text-small text-ink-soft">{ledgerMessage('notSealedLead')}</p>
    </>
  )
}

async function askAndCheck(clubId: string, entryId: string, head: ShownHead): Promise<Checked | null> {
  const proof = await readInBrowser(pathTo(paths.ledgerInclusion, { clubId, entryId }), ledgerInclusion)
  if (!proof.ok) return null
  if (proof.value.size === head.size) return { check: checkLine(entryId, head, proof.value, null), proof: proof.value }
  const sizes = { from: String(head.size), to: String(proof.value.size) }
  const consistency = await readInBrowser(pathTo(paths.ledgerConsistency, { clubId }, sizes), ledgerConsistency)
  if (!consistency.ok) return null
  return { check: checkLine(entryId, head, proof.value, consistency.value), proof: proof.value }
}
