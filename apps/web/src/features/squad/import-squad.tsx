'use client'

import { paths, pathTo } from '@espalier/contract/paths'
import type { Player } from '@espalier/contract/squads'
import { useRouter } from 'next/navigation'
import Papa from 'papaparse'
import { type ChangeEvent, useRef, useState } from 'react'
import { newUuid } from '../../api/identifiers'
import { useCommand } from '../../api/use-command'
import { squadMessage } from '../../messages/squad'
import { FailureNotice } from '../../shell/failure-notice'
import { Button } from '../../ui/button/button'
import { Status } from '../../ui/status/status'
import { TextAreaField } from '../../ui/text-field/text-area-field'
import { SquadPreview } from './squad-preview'
import { readSquadRows, type SquadReading, type SquadRow } from './squad-rows'

type ImportSquadProps = { readonly clubId: string; readonly teamId: string; readonly squad: readonly Player[] }

type Import = { readonly id: string; readonly reading: SquadReading; readonly players: readonly NewPlayer[] }
type NewPlayer = SquadRow['player'] & { readonly id: string }

/** Reads the file here, shows what is wrong row by row, and sends only what is kept of a child. */
export function ImportSquad({ clubId, teamId, squad }: ImportSquadProps) {
  const router = useRouter()
  const { state, failure, send } = useCommand()
  const [text, setText] = useState('')
  const [read, setRead] = useState<Import | null>(null)
  const [said, setSaid] = useState<string | null>(null)
  const file = useRef<HTMLInputElement>(null)

  function look(csv: string) {
    const table = Papa.parse<string[]>(csv.replace(/^\uFEFF/, ''), { skipEmptyLines: false }).data
    const reading = readSquadRows(table, squad)
    const good = reading.ok ? reading.rows.filter((row) => row.faults.length === 0) : []
    // The ids are made once for this look, so that sending again after a lost answer adds nobody twice.
    setRead({ id: newUuid(), reading, players: good.map(({ player }) => ({ id: newUuid(), ...player })) })
    setSaid(null)
  }

  async function openFile(event: ChangeEvent<HTMLInputElement>) {
    const [chosen] = event.target.files ?? []
    if (chosen === undefined) return
    try {
      const csv = await chosen.text()
      setText(csv)
      look(csv)
    } catch {
      setSaid(squadMessage('unreadable'))
    }
  }

  async function add() {
    if (read === null || state === 'sending') return
    const body = { id: read.id, players: read.players }
    const outcome = await send({ method: 'POST', path: pathTo(paths.squadImports, { clubId, teamId }), body })
    if (!outcome.ok) return
    setSaid(squadMessage('sent', { count: read.players.length }))
    setRead(null)
    setText('')
    if (file.current !== null) file.current.value = ''
    router.refresh()
  }

  return (
    <div className="flex flex-col gap-5">
      <p className="max-w-text">{squadMessage('importLead')}</p>
      <label className="flex max-w-text flex-col gap-1 font-semibold">
        {squadMessage('chooseFile')}
        <input
          ref={file}
          type="file"
          accept=".csv,text/csv,text/plain"
          onChange={openFile}
          className="min-h-target w-full rounded-cut border-[1.5px] border-ink bg-sheet p-2 font-normal"
        />
      </label>
      <TextAreaField
        name="rows"
        label={squadMessage('paste')}
        hint={squadMessage('pasteHint')}
        value={text}
        onChange={(event) => setText(event.target.value)}
        rows={6}
        spellCheck={false}
      />
      <div>
        <Button onClick={() => look(text)}>{squadMessage('preview')}</Button>
      </div>
      {read !== null && <SquadPreview reading={read.reading} />}
      <FailureNotice failure={failure} />
      {read !== null && read.players.length > 0 && (
        <div>
          <Button kind="next" onClick={add} aria-busy={state === 'sending'}>
            {state === 'sending' ? squadMessage('sending') : squadMessage('send', { count: read.players.length })}
          </Button>
        </div>
      )}
      <Status>{said}</Status>
    </div>
  )
}
