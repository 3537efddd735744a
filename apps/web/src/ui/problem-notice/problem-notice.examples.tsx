import type { Examples } from '../example'
import { ProblemNotice } from './problem-notice'

export const problemNoticeExamples = {
  'a refusal': <ProblemNotice title="Someone saved a newer version" detail="Open it and make your change there." />,
  'with places to mend': (
    <ProblemNotice
      title="Something in the request is not as it should be"
      errors={[{ pointer: '/example/title', detail: 'must be one line' }]}
      labels={{ '/example/title': 'Title' }}
    />
  ),
} satisfies Examples
