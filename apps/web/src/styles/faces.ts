import localFont from 'next/font/local'

/** The club's voice: scripts, coaching points, names of patterns. */
export const clubFace = localFont({
  src: [
    { path: './fonts/literata.woff2', style: 'normal', weight: '200 900' },
    { path: './fonts/literata-italic.woff2', style: 'italic', weight: '200 900' },
  ],
  variable: '--face-club',
  display: 'swap',
  preload: false,
})

/** The service's voice: numbers, notes, controls. */
export const toolFace = localFont({
  src: [
    { path: './fonts/atkinson-next.woff2', style: 'normal', weight: '200 800' },
    { path: './fonts/atkinson-next-italic.woff2', style: 'italic', weight: '200 800' },
  ],
  variable: '--face-tool',
  display: 'swap',
  preload: false,
})
