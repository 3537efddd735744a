import { answerPressure } from './answer-pressure'
import type { PressureQuestion } from './pressure-message'

// Looks and pressure are worked out beside the page. A newer question ends this worker, so one answer is all it gives up.
self.addEventListener('message', ({ data }: MessageEvent<PressureQuestion>) => {
  for (const answer of answerPressure(data)) self.postMessage(answer)
})
