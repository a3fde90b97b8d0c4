// The command line run in this process, with what it prints.

import { run as runHere } from '../../src/cli/run'

/** Runs it here, on the lines of a shell. */
export function run(args: string[], input = '') {
  const printed = { 1: '', 2: '' }
  const status = runHere(args, {
    input: () => input,
    print: (descriptor, text) => {
      printed[descriptor] += text
    },
  })
  const [stdout, stderr] = [printed[1], printed[2]]
  const plain = stdout.replace(/[\u00a0\u202f]/g, ' ')
  return { status, stdout, plain, stderr, errors: stderr.split('\n').filter(Boolean) }
}
