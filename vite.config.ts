import { createHash } from 'node:crypto'
import { existsSync, readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import preact from '@preact/preset-vite'
import { type Plugin, type Rolldown, runnerImport } from 'vite'
import { VitePWA } from 'vite-plugin-pwa'
import { defineConfig } from 'vitest/config'

// What pages may do: only files of this site, no inline script or style, no string turned into script.
// The two named policies are the only doors to a service worker and a worker.
const contentPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "object-src 'none'",
  "require-trusted-types-for 'script'",
  'trusted-types app-sw app-worker',
].join('; ')

/** The policy that the built page carries: with what is written into it. */
function policyOf(page: string): string {
  const written = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(page)?.[1] ?? contentPolicy
  return written.replaceAll('&#39;', "'")
}

/** Everything a static host should send; see DEVELOPERS.md, "Hosting". A page cannot set frame-ancestors itself. */
export const headersFor = (page: string) => ({
  'Content-Security-Policy': `${policyOf(page)}; frame-ancestors 'none'`,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': 'camera=(), microphone=(), geolocation=(), payment=(), usb=()',
  'Cache-Control': 'no-cache',
})

const here = (path: string) => join(import.meta.dirname, path)

/** The same policy inside the built page, for hosts that cannot send headers; the dev server needs inline scripts. */
function policyInPage(): Plugin {
  return {
    name: 'policy-in-page',
    apply: 'build',
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: contentPolicy },
        injectTo: 'head-prepend',
      },
    ],
  }
}

let builtInto = here('.dist')

/** The page as it was built last; before that none. */
function builtPage(): string {
  const path = join(builtInto, 'index.html')
  return existsSync(path) ? readFileSync(path, 'utf8') : ''
}

/** Puts `guard.ts` before all other scripts of the built page, as a file of its own. */
function guardBeforeAll(): Plugin {
  return {
    name: 'guard-before-all',
    apply: 'build',
    configResolved({ root, build }) {
      builtInto = resolve(root, build.outDir)
    },
    buildStart() {
      for (const name of ['guard', 'guard-save', EARLY])
        this.emitFile({ type: 'chunk', id: here(`src/${name}.ts`), name, preserveSignature: 'strict' })
    },
    transformIndexHtml: {
      order: 'post',
      handler(page, { bundle = {} }) {
        const addressOf = (name: string) =>
          `./${Object.values(bundle).find(each => each.type === 'chunk' && each.name === name)?.fileName}`
        const first = '<script type="module"'
        const guard = `${first} src="${addressOf('guard')}" data-save="${addressOf('guard-save')}"></script>`
        return page.replace(first, `${guard}\n    ${first}`)
      },
    },
  }
}

const EARLY = 'early'
/** What the service worker answers with: the page without the welcome, which would flash where a trip is open. */
const SHELL = 'shell.html'

const hashOf = (text: string) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`

/** The first page in one request: the welcome, its styles and the few lines that wait for taps are written into it. */
function firstPageWhole(): Plugin {
  return {
    name: 'first-page-whole',
    apply: 'build',
    enforce: 'post',
    async generateBundle(_, bundle) {
      const page = bundle['index.html']
      const early = Object.values(bundle).find(each => each.type === 'chunk' && each.name === EARLY)
      if (page?.type !== 'asset' || early?.type !== 'chunk')
        this.error('the page or what runs early is not built')
      const plain = String(page.source)
      const [link = '', address = ''] = /<link rel="stylesheet"[^>]* href="\.\/([^"]+)">/.exec(plain) ?? []
      const sheet = bundle[address]
      if (sheet?.type !== 'asset') this.error('the page has no style sheet of its own')
      const style = String(sheet.source).trim()
      const script = early.code.trim()
      const { module } = await runnerImport<{ emptyApp: () => string }>(here('src/ahead.tsx'), {
        configFile: false,
        plugins: [preact()],
        logLevel: 'error',
      })
      const policy = contentPolicy
        .replace("style-src 'self'", `style-src 'self' ${hashOf(style)}`)
        .replace("script-src 'self'", `script-src 'self' ${hashOf(script)}`)
      delete bundle[early.fileName]
      // Where a trip is open, what shows it is asked for at once; where the welcome is, once that is drawn (main.tsx).
      const ahead = [...neededBy(['open', 'store'], bundle)].filter(file => !plain.includes(file))
      const hint = (file: string) =>
        `  <link rel="${file.endsWith('.css') ? 'stylesheet' : 'modulepreload'}" crossorigin href="./${file}">\n  `
      const source = plain.replace('</head>', () => `${ahead.map(hint).join('')}</head>`)
      this.emitFile({ type: 'asset', fileName: SHELL, source })
      page.source = plain
        .replace(' data-save=', () => ` data-ahead="${ahead.map(file => `./${file}`).join(' ')}" data-save=`)
        .replace(attribute(contentPolicy), () => attribute(policy))
        // Known by its address, so that no later part asks for it again; not fetched.
        .replace(link, () => `<style>${style}</style>\n    ${link.replace('<link', '<link disabled')}`)
        .replace('</head>', () => `  <script>${script}</script>\n  </head>`)
        .replace('<div id="app"></div>', () => `<div id="app">${module.emptyApp()}</div>`)
    },
  }
}

/** Files by their names and all that they import, however deep. */
function neededBy(names: string[], bundle: Rolldown.OutputBundle): Set<string> {
  const found = new Set<string>()
  const add = (file: string) => {
    const each = bundle[file]
    if (each?.type !== 'chunk' || found.has(file)) return
    found.add(file)
    for (const sheet of each.viteMetadata?.importedCss ?? []) found.add(sheet)
    each.imports.forEach(add)
  }
  for (const each of Object.values(bundle)) if (names.includes(each.name ?? '')) add(each.fileName)
  return found
}

const attribute = (text: string) => text.replaceAll("'", '&#39;')

/** What the service worker holds a file against, so that it stores no other one in its place. */
export const integrityOf = (bytes: Buffer): string =>
  `sha384-${createHash('sha384').update(bytes).digest('base64')}`

/** Any address below the app that is no file of it leads to it. The text of this function becomes part of the worker. */
async function toTheApp(): Promise<Response> {
  const worker = globalThis as unknown as { registration: { scope: string } }
  return Response.redirect(worker.registration.scope, 302)
}

/**
 * What another app shares with this one arrives as a posted form, which a static host cannot take: the service worker
 * puts the files aside and sends the page to `?received`, where it takes them up (src/components/files/shared.ts). The text
 * of this function becomes part of the worker, so it names nothing outside itself.
 */
async function putAside({ request }: { request: Request }): Promise<Response> {
  const scope = new URL('./', request.url)
  const back = (how: string) => Response.redirect(`${scope.href}?received${how}`, 303)
  try {
    const form = await request.formData()
    const given = [...form.getAll('files'), form.get('url'), form.get('text')]
    const files = given
      .flatMap(value => (value ? (typeof value === 'string' ? new File([value], 'Shared text') : value) : []))
      .slice(0, 10)
    // More than any reader of the app takes: nothing of it is stored.
    if (files.length === 0 || files.some(({ size }) => size > 31_000_000)) return back('=not')
    await caches.delete('pack-reckoner-received')
    const aside = await caches.open('pack-reckoner-received')
    for (const [i, file] of files.entries()) {
      const headers = { 'X-Name': encodeURIComponent(file.name) }
      await aside.put(`${scope.href}received/${i}`, new Response(file, { headers }))
    }
    return back('')
  } catch {
    // The page says that it did not arrive.
    return back('=not')
  }
}

/** The guard stands alone, whatever else is missing; what runs early is written into the page. */
const isApart = (id: string) => /src\/(guard(-save)?|early)\.ts$/.test(id)

/**
 * Few files, since each costs a request and its own storing: all that the first page needs in one – but for what the
 * workers share with it, where no page is –, the other styles in one, and of the rest a file for each layer of the house
 * and for what is opened together. In order: each takes what none before it has taken. Layers import one way, so no two
 * files wait for each other, as those that share by use do: one would then run before what it imports
 * (tests/budgets.mjs looks).
 */
const chunks = [
  {
    name: 'base',
    tags: ['$initial' as const],
    test: /src\/(plan|units)\/|src\/store\/record-places|preload-helper/,
  },
  { name: 'index', tags: ['$initial' as const], test: (id: string) => !isApart(id) },
  { name: 'rest', test: /\.css$/ },
  { name: 'engine', test: /src\/(reckon|equations|files\/(worker|portions)|store\/simulation\/worker)/ },
  { name: 'plan', test: /src\/(plan|units)\/|node_modules\/zod\// },
  {
    name: 'report',
    test: /src\/report\/(?!help\/|glossary|why\/(?!(cartridges|energy|fuel|ration|words)\.))/,
  },
  { name: 'gpx', test: /src\/files\/gpx\// },
  { name: 'files', test: /src\/(files\/(?!csv\/)|store\/(look\/(worker|messages)|record-kinds))/ },
  { name: 'components', test: /src\/(components|screens\/rows)\//, minShareCount: 2 },
  { name: 'store', test: /src\/store\/(lazy|second-copy|look|take-in)/ },
  { name: 'why', test: /src\/(report\/why\/|components\/why\/(Panel|Reason))|data\/sources/ },
  { name: 'open', test: /src\/(trip-app|store\/|screens\/(need|welcome)\/)/ },
  { name: 'trip', test: /src\/screens\/(trip|packing-day|on-the-way|after-trip)\/(?!Gpx)/ },
  { name: 'track', test: /src\/screens\/trip\/Gpx/ },
  { name: 'gear', test: /src\/screens\/gear\/(?!Past)/ },
  { name: 'import', test: /src\/(screens\/(csv|gear\/Past)|files\/csv)/ },
  { name: 'shelf', test: /src\/screens\/shelf\// },
  { name: 'packs', test: /src\/screens\/packs\// },
  { name: 'beside', test: /src\/screens\/(calibrate|packs-beside|shop|side-by-side|trips)\// },
  { name: 'more', test: /src\/screens\/(backup|more|share|sheet)\/|lean-qr/ },
  { name: 'screens', minShareCount: 2, entriesAware: true, entriesAwareMergeThreshold: 4000 },
].map((group, place, all) => ({ ...group, priority: all.length - place }))

/** The bundler names what is shared by all who share it. */
const nameOf = (name = '') => `assets/${name.replace(/\.css$/, '').split('~')[0]}-[hash]`
const named = {
  chunkFileNames: ({ name }: { name: string }) => `${nameOf(name)}.js`,
  assetFileNames: ({ names }: { names: string[] }) => `${nameOf(names[0])}[extname]`,
}

const shared = {
  extends: true as const,
  root: import.meta.dirname,
}

const journeys = {
  pool: 'forks' as const,
  environment: 'node',
  globalSetup: [here('tests/browser/prepare.ts')],
  expect: { poll: { timeout: 15_000 } },
}

export default defineConfig({
  root: 'src',
  base: './',
  publicDir: '../public',
  cacheDir: '../.cache/vite',
  build: {
    outDir: '../.dist',
    emptyOutDir: true,
    target: 'es2022',
    sourcemap: false,
    manifest: true,
    modulePreload: { polyfill: false },
    rolldownOptions: { output: { codeSplitting: { groups: chunks }, ...named } },
  },
  preview: { headers: headersFor(builtPage()), port: 4173 },
  plugins: [
    preact({ devToolsEnabled: false, prefreshEnabled: false }),
    policyInPage(),
    guardBeforeAll(),
    firstPageWhole(),
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      manifest: false,
      workbox: {
        // The shell stands in for the page.
        globIgnores: ['index.html'],
        directoryIndex: SHELL,
        // Not the icons of an installed app, which the system keeps once it is installed.
        globPatterns: ['**/*.{js,css,html,svg,webmanifest}'],
        cleanupOutdatedCaches: true,
        // The first visit too is served from what was stored, so that "ready without a network" is true at once.
        clientsClaim: true,
        skipWaiting: false,
        // A host may answer anything for a file that is missing: then the version in use stays.
        manifestTransforms: [
          entries => ({
            manifest: entries.map(entry => ({
              ...entry,
              integrity: integrityOf(readFileSync(join(builtInto, entry.url))),
            })),
            warnings: [],
          }),
        ],
        // The page asks its parts from beside it, so it is served at its own address alone, whatever follows the "?".
        navigateFallback: null,
        ignoreURLParametersMatching: [/./],
        // importScripts() in a second file would be refused by the policy above.
        inlineWorkboxRuntime: true,
        runtimeCaching: [
          { urlPattern: ({ url }) => url.searchParams.has('receive'), method: 'POST', handler: putAside },
          { urlPattern: ({ request }) => request.mode === 'navigate', handler: toTheApp },
        ],
      },
    }),
  ],
  // Every test file is in exactly one project: by its folder, journeys that break something by "faults" in their name,
  // and all else is a unit test. Files share their worker and its modules, which costs a third of a worker each.
  test: {
    maxWorkers: 2,
    pool: 'threads',
    isolate: false,
    unstubGlobals: true,
    // No gate on speed: a busy machine is no defect.
    testTimeout: 180_000,
    hookTimeout: 180_000,
    projects: [
      {
        ...shared,
        test: {
          name: 'unit',
          environment: 'node',
          setupFiles: [here('tests/tools/seed.ts')],
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/{app,browser,store}/**'],
        },
      },
      {
        ...shared,
        // Each file by itself: they break the platform in turn, and one must not find it as another left it.
        test: {
          name: 'store',
          environment: 'node',
          isolate: true,
          setupFiles: [here('tests/tools/seed.ts')],
          include: ['tests/store/**/*.test.ts'],
        },
      },
      {
        ...shared,
        test: {
          name: 'app',
          environment: 'happy-dom',
          setupFiles: [here('tests/tools/seed.ts'), here('tests/app/setup.ts')],
          include: ['tests/app/**/*.test.{ts,tsx}'],
        },
      },
      {
        ...shared,
        test: {
          ...journeys,
          name: 'browser',
          provide: { oneProcess: true },
          include: ['tests/browser/**/*.test.ts'],
          exclude: ['tests/browser/**/*faults*.test.ts'],
          sequence: { groupOrder: 1 },
        },
      },
      {
        ...shared,
        // One after the other: they wait for what takes its time, and must not wait for each other.
        test: {
          ...journeys,
          name: 'faults',
          provide: { oneProcess: false },
          include: ['tests/browser/**/*faults*.test.ts'],
          sequence: { groupOrder: 2 },
          maxWorkers: 1,
        },
      },
    ],
  },
})
