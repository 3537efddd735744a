// One worker, one mutant awake, one bundle of tests: says whether they pass.
import { parentPort, workerData } from 'node:worker_threads'

globalThis.awakeMutant = workerData.mutant
let passed = true
try {
  await import(workerData.bundle)
} catch (error) {
  if (workerData.mutant === 0) console.error(error)
  passed = false
}
parentPort.postMessage(passed)
