// A small static host for a built app, with the headers a real one should send. It can be stopped, with every open
// socket cut, started again on the same port, and switched to another build, as a deploy does.
import { readFile } from 'node:fs/promises'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { extname, join, normalize } from 'node:path'
import { gzipSync } from 'node:zlib'
import { headersFor } from '../../vite.config'

const types: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
}

/** Below the root on purpose: the app must work from any folder of a host. */
const under = '/packs/'

/** A page beside the app that asks for nothing, not even an icon. */
const blank = { path: '/blank.html', body: Buffer.from('<!doctype html><link rel="icon" href="data:,">') }

export interface Site {
  url: string
  /** A page of the same origin that runs nothing: for what is done to its storage before the app. */
  blankUrl: string
  /** Paths asked for since the start, oldest first. */
  asked: string[]
  /** Cuts every connection and stops listening: the network is gone. */
  stop(): Promise<void>
  start(): Promise<void>
  /** Keeps a file of the app back until what this returns is called. */
  hold(file: string): () => void
  /** Serves another build from now on; the files of the old one are gone at once. */
  deploy(folder: string): void
  /** Answers with the app's page, as some hosts do, whatever file is asked for and is not there. */
  hideMissing(): void
}

/** Serves `folder` on a free port of this machine; `isPacked`: compressed, as most hosts do. */
export async function serve(folder: string, { isPacked = false } = {}): Promise<Site> {
  let current = folder
  let server: Server | null = null
  let port = 0
  let isHidingMissing = false
  const asked: string[] = []
  const held = new Map<string, Promise<void>>()

  const start = async () => {
    const next = createServer(async (request, response) => {
      const { pathname } = new URL(request.url ?? '/', 'http://host')
      asked.push(pathname)
      await held.get(pathname)
      const path = pathname.startsWith(under) ? normalize(`/${pathname.slice(under.length)}`) : null
      const file = path === null ? null : path.endsWith('/') ? `${path}index.html` : path
      const there =
        pathname === blank.path
          ? blank.body
          : file && (await contents(join(current, decodeURIComponent(file))))
      const page = await contents(join(current, 'index.html'))
      const body = there || !isHidingMissing ? there : page
      response.writeHead(body ? 200 : 404, {
        ...headersFor(String(page ?? '')),
        ...(isPacked && { 'Content-Encoding': 'gzip' }),
        'Content-Type': (there ? types[extname(file ?? pathname)] : types['.html']) ?? 'text/plain',
      })
      const sent = body || Buffer.from('no such file')
      response.end(isPacked ? packed(pathname, sent) : sent)
    })
    port = await listen(next, port)
    server = next
  }

  const gzipped = new Map<string, Buffer>()
  const packed = (path: string, body: Buffer): Buffer => {
    const known = gzipped.get(path) ?? gzipSync(body)
    gzipped.set(path, known)
    return known
  }

  const stop = async () => {
    const old = server
    if (!old) return
    server = null
    const closed = new Promise(resolve => old.close(resolve))
    old.closeAllConnections()
    await closed
  }

  const hold = (file: string) => {
    let release = () => {}
    const released = new Promise<void>(resolve => {
      release = resolve
    })
    held.set(`${under}${file}`, released)
    return release
  }

  const deploy = (next: string) => {
    gzipped.clear()
    current = next
  }

  const hideMissing = () => {
    isHidingMissing = true
  }

  await start()
  const host = `http://127.0.0.1:${port}`
  return {
    url: `${host}${under}`,
    blankUrl: `${host}${blank.path}`,
    asked,
    start,
    stop,
    hold,
    deploy,
    hideMissing,
  }
}

/** Ports of the sites before: a browser may still hold what was stored for one. */
const had = new Set<number>()

/** Listens on the port, or on one that no site has had (0), and says on which. */
async function listen(server: Server, asked: number): Promise<number> {
  await new Promise<void>((resolve, reject) =>
    server.once('error', reject).listen(asked, '127.0.0.1', resolve),
  )
  const { port } = server.address() as AddressInfo
  if (asked === 0 && had.has(port)) {
    await new Promise(resolve => server.close(resolve))
    return listen(server, asked)
  }
  had.add(port)
  return port
}

async function contents(path: string): Promise<Buffer | null> {
  return readFile(path).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT' || error.code === 'EISDIR') return null
    throw error
  })
}
