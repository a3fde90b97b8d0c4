// Finds a Chromium for the browser journeys and the icon drawing; nothing is ever downloaded behind the reader's back
// except, on Debian and Ubuntu with the right to do so, the distribution's own package.
import { execFileSync } from 'node:child_process'
import { accessSync, constants, existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'

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

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable']

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

/** The path of a Chromium: CHROME_PATH, then the PATH, then the usual places; installed if the system lets us. */
export function chromiumPath() {
  return findChromium() ?? installed() ?? failWithInstructions()
}

function findChromium() {
  const asked = process.env.CHROME_PATH
  if (asked) {
    if (runnable(asked)) return asked
    throw new Error(`CHROME_PATH is ${asked}, and there is no program to run there.`)
  }
  const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean)
  const onPath = names.flatMap(name => folders.map(folder => join(folder, name)))
  return [...onPath, ...(usualPlaces[process.platform] ?? [])].find(runnable)
}

function runnable(path) {
  try {
    accessSync(path, constants.X_OK)
    return true
  } catch {
    return false
  }
}

/** Debian and Ubuntu, as root or with sudo that asks nothing: the distribution's package. Elsewhere undefined. */
function installed() {
  if (!existsSync('/etc/debian_version')) return undefined
  const prefix = process.getuid() === 0 ? [] : ['sudo', '-n']
  if (prefix.length > 0 && !answers('sudo', ['-n', 'true'])) return undefined
  console.log('No Chromium here: installing the package "chromium" with apt-get.')
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  for (const step of [['update'], ['install', '-y', 'chromium']]) {
    const [program, ...args] = [...prefix, 'apt-get', ...step]
    execFileSync(program, args, { stdio: 'inherit', env })
  }
  return findChromium()
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
