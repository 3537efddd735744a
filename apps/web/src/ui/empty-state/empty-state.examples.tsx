import { ButtonLink } from '../button/button-link'
import type { Examples } from '../example'
import { EmptyState } from './empty-state'

export const emptyStateExamples = {
  'with what to do': (
    <EmptyState next={<ButtonLink href="/">Measure a space</ButtonLink>}>No space is measured yet.</EmptyState>
  ),
  'nothing to do': <EmptyState>No session today. The next one is on Thursday.</EmptyState>,
} satisfies Examples
