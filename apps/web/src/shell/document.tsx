import type { Metadata, Viewport } from 'next'
import type { ReactNode } from 'react'
import { shellMessage } from '../messages/shell'
import { clubFace, toolFace } from '../styles/faces'
import '../styles/app.css'

export const documentMetadata: Metadata = {
  title: { default: shellMessage('product'), template: `%s · ${shellMessage('product')}` },
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
