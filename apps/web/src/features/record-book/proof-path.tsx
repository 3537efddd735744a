import type { LedgerInclusion } from '@espalier/contract/ledger'
import { ledgerMessage } from '../../messages/ledger'
import { sidesOfPath } from './check-line'
import { shortHash } from './short-hash'

// One row of the list beside it, so that each bend stands at the half it is joined to.
const ROW_HEIGHT = 24
const BEND_WIDTH = 12

/** The way from a line to the root: one bend for each half it is joined to, drawn and in words. */
export function ProofPath({ proof }: { readonly proof: LedgerInclusion }) {
  const sides = sidesOfPath(proof.index, proof.size, proof.path.length)
  return (
    <details className="w-full max-w-text text-small">
      <summary className="inline-flex min-h-target items-center underline underline-offset-[0.2em]">
        {ledgerMessage('pathTitle')}
      </summary>
      <p className="text-ink-soft">{ledgerMessage('pathLead')}</p>
      <div className="flex gap-4 pt-2">
        <Bends sides={sides} />
        <ol className="flex flex-col-reverse">
          <li className="h-6">{ledgerMessage('own', { hash: shortHash(proof.entry.leafHash) })}</li>
          {proof.path.map((hash, bend) => (
            <li key={hash} className="h-6">
              {ledgerMessage(sides[bend] === 'left' ? 'joinedLeft' : 'joinedRight', { hash: shortHash(hash) })}
            </li>
          ))}
          <li className="h-6 font-semibold">{ledgerMessage('top', { hash: shortHash(proof.root) })}</li>
        </ol>
      </div>
      <p className="pt-3 font-semibold">{ledgerMessage('text')}</p>
      <p className="break-all border-y border-wire py-2">{proof.entry.body}</p>
    </details>
  )
}

function Bends({ sides }: { readonly sides: readonly ('left' | 'right')[] }) {
  const height = (sides.length + 2) * ROW_HEIGHT
  // A half joined on the left stands before the line, so the way up bends to the right, and the other way round.
  const places = [0]
  for (const side of sides) places.push((places.at(-1) ?? 0) + (side === 'left' ? BEND_WIDTH : -BEND_WIDTH))
  const least = Math.min(...places)
  const width = Math.max(...places) - least + BEND_WIDTH
  const way = places.map((x, bend) => {
    const left = x - least + BEND_WIDTH / 2
    const middle = height - (bend + 0.5) * ROW_HEIGHT
    return bend === 0 ? `M${left} ${middle}` : `V${middle}H${left}`
  })
  return (
    <svg
      role="img"
      aria-label={ledgerMessage('drawing', { count: sides.length })}
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      className="shrink-0"
    >
      <path d={`${way.join('')}V${ROW_HEIGHT / 2}`} fill="none" strokeWidth="2" className="stroke-frame" />
    </svg>
  )
}
