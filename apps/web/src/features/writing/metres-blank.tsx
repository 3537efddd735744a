'use client'

import './writing.css'
import { type Millimetres, millimetres } from '@espalier/domain/quantities'
import { useState } from 'react'
import { numberFromText } from '../../ui/number-field/number-text'

/** The metres of a length as people write them: "5", "-0.5". */
export function metresText(length: number): string {
  return String(Math.round(length / 10) / 100)
}

/** Whole millimetres of what was typed; null while it is no number or out of reach. */
export function lengthFromText(text: string, least: number, most: number): Millimetres | null {
  const metres = numberFromText(text.trim().replace('−', '-'))
  if (metres === null) return null
  const length = Math.round(metres * 1000)
  return length < least || length > most ? null : millimetres(length)
}

type MetresBlankProps = {
  readonly label: string
  readonly value: number
  readonly onWrite: (length: Millimetres) => void
  readonly least: number
  readonly most: number
}

/** A number of metres in a sentence. While it is no number the last good one stands, and the blank shows that it is wrong. */
export function MetresBlank({ label, value, onWrite, least, most }: MetresBlankProps) {
  const [typed, setTyped] = useState<{ readonly text: string; readonly for: number } | null>(null)
  const text = typed !== null && typed.for === value ? typed.text : metresText(value)
  const isWrong = lengthFromText(text, least, most) === null
  return (
    <input
      type="text"
      inputMode="text"
      aria-label={label}
      aria-invalid={isWrong || undefined}
      value={text}
      onChange={(event) => {
        const next = event.currentTarget.value
        const length = lengthFromText(next, least, most)
        setTyped({ text: next, for: length ?? value })
        if (length !== null && length !== value) onWrite(length)
      }}
      onBlur={() => setTyped(null)}
      maxLength={8}
      autoComplete="off"
      className="blank field-sizing-content min-h-target min-w-11 px-1 text-right tabular-nums"
    />
  )
}
