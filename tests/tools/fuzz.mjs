// Tries every door of tests/files/fuzz.test.ts far more often than the tests do, from a new seed each time.
//   node tests/tools/fuzz.mjs 100000          each door a hundred thousand times; the dear ones less often, by their cost
//   node tests/tools/fuzz.mjs 100000 link     only doors with this word in their name
// FC_SEED=<number> repeats a run. Exit code 1 when a door let something through; the counterexample is printed.
import { spawn } from 'node:child_process'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'

/** How many tries a text asks for; null where it is no number of them. */
export function triesIn(text) {
  const tries = Number(text)
  return Number.isInteger(tries) && tries > 0 ? tries : null
}

/** Runs the doors and returns the exit code. */
async function main([text = '', word]) {
  const tries = triesIn(text)
  if (tries === null) {
    console.error(`How many tries? "${text}" is no number of them: node tests/tools/fuzz.mjs 100000`)
    return 2
  }
  const root = join(import.meta.dirname, '..', '..')
  const vitest = spawn(
    process.execPath,
    [
      ...[join(root, 'node_modules', 'vitest', 'vitest.mjs'), 'run', '--project', 'unit'],
      ...['tests/files/fuzz.test.ts', '--reporter=verbose', '--testTimeout=0'],
      ...(word ? ['-t', word] : []),
    ],
    { cwd: root, stdio: 'inherit', env: { FC_SEED: 'random', ...process.env, FUZZ_RUNS: String(tries) } },
  )
  return new Promise(resolve => vitest.on('exit', code => resolve(code ?? 1)))
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href)
  process.exitCode = await main(process.argv.slice(2))
