// Finds a Chromium for the browser journeys and the icon drawing; nothing is ever downloaded behind the reader's back
// except, on Debian and Ubuntu with the right to do so, the distribution's own package.
import { execFileSync, spawnSync } from 'node:child_process'
import { accessSync, constants, existsSync } from 'node:fs'
import { basename, delimiter, join } from 'node:path'

// Pages of the browser's own, drawn beside every window and shown to nobody: they cost a third of a visit.
const ownPages = ['WebUIOmniboxPopup', 'WebUIOmniboxAimPopup', 'WebUIOmniboxFullPopup']
// What Playwright leaves out too: of two such lists the browser heeds the last.
const left = [
  'AimEnabled',
  'AvoidUnnecessaryBeforeUnloadCheckSync',
  'DestroyProfileOnBrowserClose',
  'HttpsFirstBalancedModeAutoEnable',
  'HttpsUpgrades',
  'MediaRouter',
  'NetworkTimeServiceQuerying',
  'OptimizationHints',
  'PaintHolding',
  'PreconnectToSearch',
  'ThirdPartyStoragePartitioning',
]

/** Switches for a quiet, sealed browser: no first-run pages, no background traffic. */
export const chromiumFlags = [
  `--disable-features=${[...ownPages, ...left].join(',')}`,
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]

// The same engine without the windows and services of a whole browser, which cost a third of each visit.
const shells = ['chromium-headless-shell', 'chrome-headless-shell']
const browsers = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable']
const packages = ['chromium-headless-shell', 'chromium']

const usualPlaces = {
  darwin: [
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  ],
  win32: [process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA]
    .filter(Boolean)
    .flatMap(folder => [
      join(folder, 'Chromium/Application/chrome.exe'),
      join(folder, 'Google/Chrome/Application/chrome.exe'),
      join(folder, 'Microsoft/Edge/Application/msedge.exe'),
    ]),
}

const instructions = {
  linux:
    'Install it (Debian: apt-get install chromium; Fedora: dnf install chromium; Arch: pacman -S chromium; Ubuntu: snap install chromium)',
  darwin: 'Install it (brew install --cask chromium, or Google Chrome in /Applications)',
  win32: 'Install Google Chrome or Microsoft Edge in its usual place',
}

/**
 * The path of a Chromium: CHROME_PATH, then a headless shell and a whole browser on the PATH, then the usual places;
 * installed if the system lets us. `whole`: what only a whole browser answers is asked of it.
 */
export function chromiumPath({ whole = false } = {}) {
  const found = findChromium(whole)
  if (found && (whole || isShell(found) || process.env.CHROME_PATH || !isOursToChange())) return found
  return installed(whole) ?? found ?? failWithInstructions()
}

/** Root on Debian is a machine made for this: there the lighter browser is fetched even beside another. */
const isOursToChange = () => existsSync('/etc/debian_version') && process.getuid() === 0

function findChromium(whole) {
  const asked = process.env.CHROME_PATH
  if (asked && !runnable(asked))
    throw new Error(`CHROME_PATH is ${asked}, and there is no program to run there.`)
  if (asked && !(whole && isShell(asked))) return asked
  const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean)
  const names = whole ? browsers : [...shells, ...browsers]
  const onPath = names.flatMap(name => folders.map(folder => join(folder, name)))
  return [...onPath, ...(usualPlaces[process.platform] ?? [])].find(runnable)
}

const isShell = path => shells.includes(basename(path))

function runnable(path) {
  try {
    accessSync(path, constants.X_OK)
    return true
  } catch {
    return false
  }
}

/** Debian and Ubuntu, as root or with sudo that asks nothing: the distribution's packages. Elsewhere undefined. */
function installed(whole) {
  if (!existsSync('/etc/debian_version')) return undefined
  const prefix = isOursToChange() ? [] : ['sudo', '-n']
  if (prefix.length > 0 && !answers('sudo', ['-n', 'true'])) return undefined
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  const succeeds = (...args) => {
    const [program, ...rest] = [...prefix, 'apt-get', '-o', 'Acquire::Retries=0', ...args]
    return spawnSync(program, rest, { stdio: 'inherit', env }).status === 0
  }
  console.log(`Installing ${packages.join(' and ')} with apt-get.`)
  // Ubuntu and older Debian have no shell apart; what is missing in the end is said by the caller.
  if (succeeds('update') && !succeeds('install', '-y', ...packages)) succeeds('install', '-y', 'chromium')
  return findChromium(whole)
}

function answers(program, args) {
  try {
    execFileSync(program, args, { stdio: 'ignore' })
    return true
  } catch {
    return false
  }
}

function failWithInstructions() {
  const how = instructions[process.platform] ?? instructions.linux
  throw new Error(
    `The browser journeys need Chromium, and none was found. ${how}, or set CHROME_PATH to the program, and run this again.`,
  )
}
