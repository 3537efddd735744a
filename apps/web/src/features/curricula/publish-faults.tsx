import type { DraftDocument } from '@espalier/domain/curriculum'
import Link from 'next/link'
import { curriculaMessage } from '../../messages/curricula'
import { pages, pageTo } from '../../paths'
import { type FaultOnWire, faultGroups } from './publish-refusal'

type PublishFaultsProps = {
  readonly clubId: string
  readonly draft: DraftDocument
  readonly faults: readonly FaultOnWire[]
}

/** What stands in the way of a version, with a way to each pattern that is to be mended. */
export function PublishFaults({ clubId, draft, faults }: PublishFaultsProps) {
  return (
    <ul className="flex flex-col gap-2">
      {faultGroups(faults, draft).map(({ patternId, details }) => (
        <li key={patternId ?? ''}>
          {details.map((detail) => (
            <p key={detail}>{detail}</p>
          ))}
          {patternId !== null && (
            <Link
              href={pageTo(pages.pattern, { clubId, patternId })}
              className="inline-flex min-h-target items-center text-small"
            >
              {curriculaMessage('openPattern')}
            </Link>
          )}
        </li>
      ))}
    </ul>
  )
}
