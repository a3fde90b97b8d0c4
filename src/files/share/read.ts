// From the fragment of a link, which anybody may have written, to a plan or a list of packs, or to a sentence that says
// why it is none.
// Every step has its cap: characters, unpacked bytes, depth (in the plan's own parser), then schema and rules.

import { cleanText, type ParsedAny, parseForeign, problemInWords, type WrittenPlan } from '../../plan'
import { countText } from '../../units'
import { type ReadPacks, readPacks } from '../pack-list'
import { fromBase64url } from './base64url'
import { crc32 } from './crc32'
import { canDeflate, inflate } from './deflate'
import { SHARE_CAPS } from './limits'
import { LINK_VERSION, type LinkKind } from './link'

export type ReadLink = { ok: true; document: WrittenPlan } | Refused

interface Refused {
  ok: false
  message: string
}
const refuse = (message: string): Refused => ({ ok: false, message })
const DAMAGED = refuse(
  'This link was cut short or changed on its way: copy the whole of it once more, or ask for a file.',
)

/** Reads the fragment of a link to a plan, with or without its "#". Never throws or rejects, and changes nothing. */
export async function readLink(fragment: string): Promise<ReadLink> {
  const found = await unsealed(fragment, 'plan')
  if (!found.ok) return found
  const parsed = parseForeign(found.value)
  return parsed.ok ? { ok: true, document: parsed.document } : wrongPlan(parsed)
}

/** As {@link readLink}, of a link to a list of packs; their ids come from `newId`. */
export async function readPacksLink(fragment: string, newId: () => string): Promise<ReadPacks> {
  const found = await unsealed(fragment, 'packs')
  return found.ok ? readPacks(found.value, newId) : found
}

const WHAT: Record<LinkKind, string> = { plan: 'plan', packs: 'list of packs' }

async function unsealed(fragment: string, kind: LinkKind): Promise<{ ok: true; value: unknown } | Refused> {
  const text = fragment.startsWith('#') ? fragment.slice(1) : fragment
  if (text.length > SHARE_CAPS.fragmentChars)
    return refuse(
      `This link is ${countText(text.length)} characters long and at most ${countText(SHARE_CAPS.fragmentChars)} are read: ask for a file.`,
    )
  const start = `${kind}=`
  const parts = text.startsWith(start) ? /^(\d{1,4})\.(.+)$/.exec(text.slice(start.length)) : null
  if (!parts) return text.startsWith(start) ? DAMAGED : refuse(`This link carries no ${WHAT[kind]}.`)
  if (Number(parts[1]) > LINK_VERSION)
    return refuse('This link was made by a newer Pack Reckoner: update the app, then open it again.')
  const bytes = Number(parts[1]) === LINK_VERSION ? fromBase64url(parts[2]!) : null
  if (!bytes || bytes.length <= 4) return DAMAGED
  if (!canDeflate()) return refuse('This browser cannot unpack this link: update it, or ask for a file.')
  const unpacked = await inflate(bytes.subarray(0, -4), SHARE_CAPS.unpackedBytes)
  if (!unpacked.ok && unpacked.because === 'too-large')
    return refuse(
      `This link unpacks to more than ${SHARE_CAPS.unpackedBytes / 1024} KiB, the most that is read: ask for a file.`,
    )
  if (!unpacked.ok || crc32(unpacked.bytes) !== sealOf(bytes)) return DAMAGED
  try {
    return { ok: true, value: JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(unpacked.bytes)) }
  } catch {
    // The seal is whole, so nothing was lost on the way: the link was made like this.
    return refuse(`This link holds something other than a ${WHAT[kind]}: ask for a file.`)
  }
}

const sealOf = ({ buffer, byteOffset, length }: Uint8Array) =>
  new DataView(buffer, byteOffset, length).getUint32(length - 4, true)

function wrongPlan({ problems: [first] }: Extract<ParsedAny, { ok: false }>) {
  return refuse(`The plan in this link cannot be used. ${cleanText(problemInWords(first)).slice(0, 300)}.`)
}
