import 'server-only'
import { paths } from '@espalier/contract/paths'
import { type Me, me } from '@espalier/contract/sign-in'
import { cookies, headers } from 'next/headers'
import { notFound, redirect } from 'next/navigation'
import { cache } from 'react'
import * as z from 'zod/mini'
import { pages } from '../paths'
import { LOGIN_COOKIE, loginCookieHeader } from './login-cookie'
import { visitorHeaders } from './visitor-headers'

/** The API gave no answer a page can show; the error page takes over. */
export class ApiFailure extends Error {
  override readonly name = 'ApiFailure'
}

const PATIENCE_MILLISECONDS = 10_000

type Answer<Value> =
  | { readonly kind: 'found'; readonly value: Value }
  | { readonly kind: 'not-found' }
  | { readonly kind: 'not-signed-in' }

/** Reads one thing; what is missing or hidden is null. Who is not signed in is sent home, where that is explained. */
export async function findFromApi<Value>(path: string, shape: z.ZodMiniType<Value>): Promise<Value | null> {
  const answer = await askApi(path, shape)
  switch (answer.kind) {
    case 'found':
      return answer.value
    case 'not-found':
      return null
    case 'not-signed-in':
      redirect(pages.home)
  }
}

/** Reads what the page cannot be without: missing or hidden, the visitor gets the page of a missing thing. */
export async function readFromApi<Value>(path: string, shape: z.ZodMiniType<Value>): Promise<Value> {
  return (await findFromApi(path, shape)) ?? notFound()
}

/** Who is signed in, asked once an answer; null when nobody is. */
export const findMe = cache(async (): Promise<Me | null> => {
  if ((await readLoginHeader()) === null) return null
  const answer = await askApi(paths.me, me)
  return answer.kind === 'found' ? answer.value : null
})

/** One club as the signed-in person sees it, for the frame of its pages. */
export async function readMyClub(clubId: string): Promise<Me['clubs'][number]> {
  const myself = await findMe()
  if (myself === null) redirect(pages.home)
  return myself.clubs.find((club) => club.clubId === clubId) ?? notFound()
}

async function askApi<Value>(path: string, shape: z.ZodMiniType<Value>): Promise<Answer<Value>> {
  const response = await fetch(new URL(path, apiOrigin()), {
    headers: await forwardedHeaders(),
    cache: 'no-store',
    redirect: 'error',
    signal: AbortSignal.timeout(PATIENCE_MILLISECONDS),
  })
  if (response.status === 401) return { kind: 'not-signed-in' }
  // 403 says that a thing exists and this is forbidden; for a page that is read both come to the same.
  if (response.status === 404 || response.status === 403) return { kind: 'not-found' }
  if (!response.ok) throw new ApiFailure(`GET ${path} was answered with ${response.status}`)
  const parsed = z.safeParse(shape, await response.json())
  if (!parsed.success)
    throw new ApiFailure(`GET ${path} does not hold to the contract: ${z.prettifyError(parsed.error)}`)
  return { kind: 'found', value: parsed.data }
}

function apiOrigin(): string {
  const origin = process.env.ESPALIER_API_ORIGIN
  if (origin === undefined) throw new ApiFailure('ESPALIER_API_ORIGIN is not set')
  return origin
}

/** Only the login, the request id and who to count go on: nothing else of a visitor's request is the API's business. */
async function forwardedHeaders(): Promise<Headers> {
  const forwarded = new Headers({ accept: 'application/json' })
  const login = await readLoginHeader()
  if (login !== null) forwarded.set('cookie', login)
  const asked = await headers()
  const requestId = asked.get('x-request-id')
  if (requestId !== null) forwarded.set('x-request-id', requestId)
  const visitor = visitorHeaders(asked, process.env.ESPALIER_WEB_KEY)
  for (const [name, value] of Object.entries(visitor)) forwarded.set(name, value)
  return forwarded
}

async function readLoginHeader(): Promise<string | null> {
  return loginCookieHeader((await cookies()).get(LOGIN_COOKIE)?.value)
}
