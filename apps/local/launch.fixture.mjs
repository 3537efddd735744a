// The launcher with stand-ins for the API and the pages.
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { launch } from './launch.mjs'
import { readArguments } from './read-arguments.mjs'
import { refuseSecondStart } from './running.mjs'

const here = dirname(fileURLToPath(import.meta.url))
const entry = join(here, 'stand-in.fixture.mjs')

try {
  const wish = readArguments([], process.env)
  await refuseSecondStart(wish.folder)
  await launch({
    root: dirname(dirname(here)),
    ...wish,
    programs: {
      web: (port) => ({ name: 'web', entry, args: ['web', String(port)] }),
      api: { name: 'api', entry, args: ['api'] },
      demo: null,
    },
  })
} catch (error) {
  console.error(error.message)
  process.exitCode = 1
}
