'use client'

import { lazy, Suspense, useEffect, useState } from 'react'
import type { Failure } from '../../api/browser'
import { shellMessage } from '../../messages/shell'
import { tonightMessage } from '../../messages/tonight'
import { listWaiting } from '../../offline/outbox'
import { pages, pageTo } from '../../paths'
import { pressClasses } from '../../ui/button/button'
import { EmptyState } from '../../ui/empty-state/empty-state'
import type { FieldAddress } from './field-address'
import { FieldFrame } from './field-frame'
import { isSignedOut } from './is-signed-out'
import { OthersWaiting, Standing } from './standing'
import { TonightPage } from './tonight-page'
import { type Address, useAddress } from './use-address'
import { type Tonight, type TonightState, useTonight } from './use-tonight'

// Tonight comes first and alone; the other views follow as soon as the page is at rest, so that they are here without signal.
const views = {
  plan: () => import('./plan-page'),
  setOut: () => import('../field-set-out/set-out-page'),
  lineUps: () => import('./line-ups-page'),
  sheet: () => import('../sheet/sheet-page'),
  report: () => import('../report/report-page'),
}
const PlanPage = lazy(() => views.plan().then((module) => ({ default: module.PlanPage })))
const SetOutPage = lazy(() => views.setOut().then((module) => ({ default: module.SetOutPage })))
const LineUpsPage = lazy(() => views.lineUps().then((module) => ({ default: module.LineUpsPage })))
const SheetPage = lazy(() => views.sheet().then((module) => ({ default: module.SheetPage })))
const ReportPage = lazy(() => views.report().then((module) => ({ default: module.ReportPage })))

/** All of the coach's pages: one static page that reads its address, shows what the phone keeps, then what is newer. */
export function FieldApp() {
  const { address, hrefOf } = useAddress()
  if (address === undefined) return <Opening />
  if (address === null) return <NoTeam />
  return <TeamApp key={`${address.clubId} ${address.teamId}`} address={address} hrefOf={hrefOf} />
}

function TeamApp({ address, hrefOf }: { readonly address: FieldAddress; readonly hrefOf: Address['hrefOf'] }) {
  const state = useTonight(address, hrefOf)
  useFetchedViews()
  if (state.tonight === null) return <NotYet state={state} clubId={address.clubId} />
  return (
    <Suspense fallback={<Opening />}>
      <View key={address.view} view={address.view} tonight={state.tonight} />
    </Suspense>
  )
}

function View({ view, tonight }: { readonly view: FieldAddress['view']; readonly tonight: Tonight }) {
  switch (view) {
    case 'tonight':
      return <TonightPage tonight={tonight} />
    case 'plan':
      return <PlanPage tonight={tonight} />
    case 'set-out':
      return <SetOutPage tonight={tonight} />
    case 'line-ups':
      return <LineUpsPage tonight={tonight} />
    case 'sheet':
      return <SheetPage tonight={tonight} />
    case 'report':
      return <ReportPage tonight={tonight} />
  }
}

/** Fetches the other views once nothing else is to do; a view that fails now is asked for again when it is opened. */
function useFetchedViews(): void {
  useEffect(() => {
    const timer = setTimeout(() => {
      for (const fetchView of Object.values(views)) void fetchView().catch(() => null)
    }, AT_REST_MS)
    return () => clearTimeout(timer)
  }, [])
}

const AT_REST_MS = 1500

function Opening() {
  return (
    <FieldFrame club={shellMessage('product')} title={tonightMessage('tonight')}>
      <p role="status" className="text-ink-soft">
        {tonightMessage('opening')}
      </p>
    </FieldFrame>
  )
}

function NoTeam() {
  return (
    <FieldFrame club={shellMessage('product')} title={tonightMessage('noTeamTitle')}>
      <EmptyState next={<HomeLink />}>{tonightMessage('noTeam')}</EmptyState>
    </FieldFrame>
  )
}

type NotYetProps = { readonly state: TonightState; readonly clubId: string }

/** No evening to show: still asking, nothing kept and no answer, or no date in two weeks. */
function NotYet({ state: { kitState, outbox, hasNoDate }, clubId }: NotYetProps) {
  const { kit, failure, isAsking } = kitState
  if (kit === null && failure === null && isAsking) return <Opening />
  if (!hasNoDate && failure === null) return <Opening />
  return (
    <FieldFrame
      club={kit?.club.name ?? shellMessage('product')}
      {...(kit === null ? {} : { team: kit.team.name })}
      standing={kit === null ? undefined : <Standing kitState={kitState} outbox={outbox} />}
      title={tonightMessage(hasNoDate ? 'noDates' : 'nothingKept')}
    >
      <EmptyState next={isSignedOut(failure) ? <SignInLink /> : <HomeLink />}>
        {hasNoDate ? tonightMessage('noDatesLead') : whyNothing(failure)}{' '}
        {kit === null && <LeftUnsent clubId={clubId} />}
      </EmptyState>
    </FieldFrame>
  )
}

/** Whoever is not signed in is shown no write of anybody, but is told that some wait: nothing is lost unsaid. */
function LeftUnsent({ clubId }: { readonly clubId: string }) {
  const [count, setCount] = useState(0)
  useEffect(() => {
    void listWaiting(clubId).then((waiting) => setCount(waiting.length))
  }, [clubId])
  return <OthersWaiting count={count} />
}

function whyNothing(failure: Failure | null): string {
  if (isSignedOut(failure)) return tonightMessage('whySignedOut')
  return tonightMessage(failure?.kind === 'problem' ? 'whyHidden' : 'whyNoAnswer')
}

function SignInLink() {
  return (
    <a href={pageTo(pages.signIn, {})} className={pressClasses('plain')}>
      {tonightMessage('signIn')}
    </a>
  )
}

function HomeLink() {
  return (
    // A plain link: the router's own is for pages that are fetched, and no part of a page that opens without signal.
    <a href={pageTo(pages.home, {})} className={pressClasses('plain')}>
      {tonightMessage('goHome')}
    </a>
  )
}
