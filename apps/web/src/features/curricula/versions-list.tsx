import type { VersionSummary } from '@espalier/contract/curricula'
import Link from 'next/link'
import { curriculaMessage } from '../../messages/curricula'
import { pages, pageTo } from '../../paths'
import { instantWords } from '../../shell/dates'
import { shortHash } from './version-words'

type VersionsListProps = {
  readonly clubId: string
  readonly curriculumId: string
  readonly zone: string
  readonly versions: readonly VersionSummary[]
}

/** Published versions, the newest first, each on its wire. */
export function VersionsList({ clubId, curriculumId, zone, versions }: VersionsListProps) {
  const newestFirst = [...versions].sort((one, other) => other.number - one.number)
  return (
    <ol className="border-b border-wire">
      {newestFirst.map((version) => (
        <li key={version.number} className="flex flex-col gap-1 border-t border-wire py-2">
          <p className="flex flex-wrap items-baseline gap-x-4">
            <Link
              href={pageTo(pages.version, { clubId, curriculumId, number: version.number })}
              className="inline-flex min-h-target items-center text-lead font-semibold"
            >
              {curriculaMessage('version', { number: version.number })}
            </Link>
            <span>{curriculaMessage(version.offered ? 'isOffered' : 'isOlder')}</span>
          </p>
          <VersionSeal version={version} clubId={clubId} zone={zone} />
        </li>
      ))}
    </ol>
  )
}

type VersionSealProps = { readonly version: VersionSummary; readonly clubId: string; readonly zone: string }

/** By whom and when it was published, the hash of its content, its signature and its entry in the record book. */
export function VersionSeal({ version, clubId, zone }: VersionSealProps) {
  return (
    <div className="text-small text-ink-soft">
      <p>
        {curriculaMessage('publishedBy', {
          name: version.publishedBy,
          when: instantWords(version.publishedAt, zone),
        })}
      </p>
      <div className="flex flex-wrap items-baseline gap-x-4">
        <details>
          <summary className="inline-flex min-h-target items-center underline underline-offset-[0.2em]">
            {curriculaMessage('hashShort', { hash: shortHash(version.contentHash) })}
          </summary>
          <p className="max-w-text break-all">{curriculaMessage('hashFull', { hash: version.contentHash })}</p>
          <p className="max-w-text">{curriculaMessage('hashMeans')}</p>
          <p className="max-w-text break-all">{curriculaMessage('entryFull', { entry: version.entryId })}</p>
        </details>
        <span>{curriculaMessage(version.signature === 'signed' ? 'signed' : 'signaturePending')}</span>
        <Link href={pageTo(pages.ledger, { clubId })} className="inline-flex min-h-target items-center">
          {curriculaMessage('entry', { entry: version.entryId.slice(0, 8) })}
        </Link>
      </div>
    </div>
  )
}
