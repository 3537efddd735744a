import type { ReactNode } from 'react'
import { shellMessage } from '../../messages/shell'
import { Document, documentMetadata, documentViewport } from '../../shell/document'

export const metadata = { ...documentMetadata, title: shellMessage('product') }
export const viewport = documentViewport
export const dynamic = 'error'

/** Field pages are made at build time and open offline; reading the request in here fails the build. */
export default function FieldLayout({ children }: { readonly children: ReactNode }) {
  return (
    <Document>
      <div className="field">{children}</div>
    </Document>
  )
}
