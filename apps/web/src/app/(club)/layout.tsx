import { connection } from 'next/server'
import type { ReactNode } from 'react'
import { Document, documentMetadata, documentViewport } from '../../shell/document'

export const metadata = documentMetadata
export const viewport = documentViewport

/** Pages in here are made per answer: their scripts carry the answer's nonce, and nothing of a club is ever cached. */
export default async function ClubLayout({ children }: { readonly children: ReactNode }) {
  await connection()
  return <Document>{children}</Document>
}
