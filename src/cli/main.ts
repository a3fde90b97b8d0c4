// The command line: read plans, reckon, print.

import { readFileSync, writeSync } from 'node:fs'
import { run } from './run'

/** Writes all of it before going on: a pipe may take less than it is offered. */
function print(descriptor: 1 | 2, text: string) {
  const bytes = Buffer.from(text, 'utf8')
  for (let done = 0; done < bytes.length; ) {
    try {
      done += writeSync(descriptor, bytes, done)
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EAGAIN') throw error
    }
  }
}

process.exitCode = run(process.argv.slice(2), { input: () => readFileSync(0, 'utf8'), print })
