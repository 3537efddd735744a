import type { ReactNode } from 'react'
import { readMyClub } from '../api/server'
import { shellMessage } from '../messages/shell'
import { pages } from '../paths'
import { type Crumb, PageFrame } from '../ui/page-frame/page-frame'
import { SignOut } from './sign-out'

type ClubPageProps = {
  readonly clubId: string
  readonly title: string
  /** The club's own words (a pattern's name, a curriculum's) are set in the club's voice. */
  readonly voice?: 'club' | 'tool'
  readonly crumbs?: readonly Crumb[]
  readonly lead?: ReactNode
  readonly presses?: ReactNode
  readonly children: ReactNode
}

/** The frame of every page of a club. Whoever is not of the club gets the page of a missing thing. */
export async function ClubPage({ clubId, children, ...frame }: ClubPageProps) {
  const club = await readMyClub(clubId)
  return (
    <PageFrame
      {...frame}
      owner={{ title: club.name, href: pages.home }}
      remark={club.demo ? shellMessage('demo') : undefined}
      account={<Account name={club.displayName} />}
      words={frameWords}
    >
      {children}
    </PageFrame>
  )
}

/** The frame of pages outside any club. */
export function PlainPage(props: Omit<ClubPageProps, 'clubId'> & { readonly account?: ReactNode }) {
  return <PageFrame {...props} owner={{ title: shellMessage('product'), href: pages.home }} words={frameWords} />
}

export function Account({ name }: { readonly name: string }) {
  return (
    <>
      <span>{name}</span>
      <SignOut />
    </>
  )
}

const frameWords = { skip: shellMessage('skip'), where: shellMessage('where') }
