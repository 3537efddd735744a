'use client'

import { useState } from 'react'
import { Button } from '../button/button'
import { Dialog } from './dialog'

export function DialogExample() {
  const [open, setOpen] = useState(false)
  return (
    <>
      <Button onClick={() => setOpen(true)}>Cancel this evening</Button>
      <Dialog
        open={open}
        title="Cancel Tuesday 6 October?"
        closeLabel="Keep it"
        onClose={() => setOpen(false)}
        presses={<Button onClick={() => setOpen(false)}>Cancel the evening</Button>}
      >
        <p>The team keeps its place in the season; the stages move to the next date.</p>
      </Dialog>
    </>
  )
}
