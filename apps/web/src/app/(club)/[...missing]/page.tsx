import { notFound } from 'next/navigation'

/** Addresses that no page answers: they get the page of a missing thing, made per answer like all others. */
export default function MissingPage(): never {
  notFound()
}
