import { join } from 'node:path'
import type { NextConfig } from 'next'
import { STATIC_HEADERS } from './src/security-headers'

const config: NextConfig = {
  poweredByHeader: false,
  reactStrictMode: true,
  // The workspace packages are TypeScript sources, compiled together with the app.
  transpilePackages: ['@espalier/domain', '@espalier/contract'],
  turbopack: { root: join(import.meta.dirname, '../..') },
  images: { unoptimized: true },
  devIndicators: false,
  // Types are checked by `npm run check`, tests included; a build of checked code need not do it again.
  typescript: { ignoreBuildErrors: true },
  // Every answer, files too; proxy.ts adds the content security policy to pages.
  headers: async () => [{ source: '/:path*', headers: STATIC_HEADERS.map(([key, value]) => ({ key, value })) }],
}

export default config
