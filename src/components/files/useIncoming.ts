// The doors into the app that are no buttons: a file dropped or pasted anywhere, opened with the app by the system, or
// shared with it from another app.

import { useEffect } from 'preact/hooks'
import { receive } from './queue'
import { takeShared } from './shared'

/** The system's list of files to open with the app; Chromium on a desk has one. */
interface LaunchQueue {
  setConsumer: (consumer: (launch: { files?: readonly { getFile: () => Promise<File> }[] }) => void) => void
}

/** Texts that mean something outside every field; any other is no business of the app. */
function isMeant(text: string): boolean {
  const head = text.trimStart().slice(0, 4096)
  if (head.startsWith('{')) return text.includes('"pack-reckoner/')
  return /<gpx[\s>]|#(?:plan|packs)=\d/.test(head)
}

export function useIncoming(): void {
  useEffect(() => {
    const stop = new AbortController()
    const { signal } = stop
    addEventListener('dragover', onDragOver, { signal })
    addEventListener('drop', onDrop, { signal })
    addEventListener('paste', onPaste, { signal })
    takeLaunched()
    void takeShared().then(receive)
    return () => stop.abort()
  }, [])
}

/** Without this the browser leaves the app and shows the file by itself. */
function onDragOver(event: DragEvent) {
  if (event.dataTransfer?.types.includes('Files')) event.preventDefault()
}

function onDrop(event: DragEvent) {
  const files = event.dataTransfer?.files
  if (!files?.length) return
  event.preventDefault()
  receive(files)
}

function onPaste(event: ClipboardEvent) {
  if ((event.target as Element | null)?.closest?.('input, textarea, select')) return
  const { files } = event.clipboardData ?? {}
  if (files?.length) return receive(files)
  const text = event.clipboardData?.getData('text/plain') ?? ''
  if (isMeant(text)) receive([new File([text], 'Pasted text', { type: 'text/plain' })])
}

function takeLaunched() {
  const { launchQueue } = globalThis as { launchQueue?: LaunchQueue }
  launchQueue?.setConsumer(({ files = [] }) => {
    // A file that cannot be had any more is shown as one that cannot be read.
    const gone = () => new File([], 'The file')
    void Promise.all(files.map(handle => handle.getFile().catch(gone))).then(receive)
  })
}
