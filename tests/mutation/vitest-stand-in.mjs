// What the domain's tests use of vitest, so that a bundle of them runs inside one worker in milliseconds: the assertions are
// vitest's own, only the runner is not. A test runs as it is met; the first that fails ends the run by throwing.
import { chai, GLOBAL_EXPECT, JestAsymmetricMatchers, JestChaiExpect, JestExtend, setState } from '@vitest/expect'

chai.use(JestExtend)
chai.use(JestChaiExpect)
chai.use(JestAsymmetricMatchers)

export const expect = (value, message) => chai.expect(value, message)
Object.assign(expect, chai.expect)
for (const name of ['any', 'anything', 'arrayContaining', 'objectContaining', 'stringContaining', 'stringMatching']) {
  if (chai.expect[name] !== undefined) expect[name] = chai.expect[name]
}
globalThis[GLOBAL_EXPECT] = expect
setState({ assertionCalls: 0, isExpectingAssertions: false, isExpectingAssertionsError: null }, expect)

function bodyOf(rest) {
  return rest.find((each) => typeof each === 'function')
}

function runner() {
  const run = (_name, ...rest) => {
    const result = bodyOf(rest)()
    if (result instanceof Promise) throw new Error('a test that waits cannot run here')
  }
  run.each =
    (rows) =>
    (_name, ...rest) => {
      for (const row of rows) {
        const result = Array.isArray(row) ? bodyOf(rest)(...row) : bodyOf(rest)(row)
        if (result instanceof Promise) throw new Error('a test that waits cannot run here')
      }
    }
  return run
}

export const test = runner()
export const describe = runner()
