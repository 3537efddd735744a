// Preloaded into what a test run starts: ends it, as Ctrl-C does, once the run is gone, however it went. Standard input is
// a pipe that only the parent holds open, so it ends with the parent, also when that was killed.
process.stdin.on('end', () => process.kill(process.pid, 'SIGTERM'))
process.stdin.resume()
process.stdin.unref?.()
