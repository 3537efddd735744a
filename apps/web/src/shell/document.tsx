import type { Metadata, Viewport } from 'next'
import type { ReactNode } from 'react'
import { clubFace, toolFace } from '../styles/faces'
import '../styles/app.css'

/** Without a title: each desk page's frame renders its own, and the phone's pages set theirs as views change. */
export const documentMetadata: Metadata = {
  robots: { index: false, follow: false },
  formatDetection: { telephone: false, date: false, address: false, email: false },
}

export const documentViewport: Viewport = { width: 'device-width', initialScale: 1 }

/** The outermost element of every page, with both voices' faces. */
export function Document({ children }: { readonly children: ReactNode }) {
  return (
    <html lang="en" className={`${clubFace.variable} ${toolFace.variable}`}>
      <body>{children}</body>
    </html>
  )
}
