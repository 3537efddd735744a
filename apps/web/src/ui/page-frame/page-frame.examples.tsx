import { Button } from '../button/button'
import type { Examples } from '../example'
import { PageFrame } from './page-frame'

const words = { skip: 'Skip to the page', where: 'Where you are' }

export const pageFrameExamples = {
  'in a club': (
    <PageFrame
      title="Third man on the right"
      voice="club"
      owner={{ title: 'Quillmoor Juniors', href: '/clubs/1' }}
      crumbs={[
        { title: 'U10 draft 5', href: '/clubs/1/draft' },
        { title: 'Build-out', href: '/clubs/1/draft/build-out' },
      ]}
      lead="Goal kick to shot, 7v7 in 2-3-1."
      account="Dana"
      presses={<Button>Publish version 5</Button>}
      words={words}
    >
      <p>The page.</p>
    </PageFrame>
  ),
  'outside any club': (
    <PageFrame title="Where to?" owner={{ title: 'Espalier', href: '/' }} words={words}>
      <p>The page.</p>
    </PageFrame>
  ),
} satisfies Examples
