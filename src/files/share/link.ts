// A plan or a list of packs as a link: the whole of it in the part after "#", which browsers keep to themselves and send
// to no server. #plan=1.<base64url of: the JSON packed with raw deflate, then the CRC-32 of that JSON in four bytes>

import type { WrittenPlan } from '../../plan'
import { countText } from '../../units'
import type { PacksDocument } from '../pack-list'
import { toBase64url } from './base64url'
import { crc32 } from './crc32'
import { canDeflate, deflate } from './deflate'
import { SHARE_CAPS } from './limits'
import { withShortIds } from './short-ids'

/** What a link can carry, by what its fragment begins with. */
export type LinkKind = 'plan' | 'packs'

/** The version of the packing, not that of what is packed. */
export const LINK_VERSION = 1

export type SharedLink = { ok: true; link: string } | { ok: false; message: string }

/**
 * The link that carries this plan, to open with the app at `base`, whose own query and fragment are dropped.
 * No link where the plan is too long for one, or where the browser cannot pack: `message` then says what to do.
 */
export const shareLink = (document: WrittenPlan, base: URL): Promise<SharedLink> =>
  linkOf('plan', withShortIds(document), base)

/** As {@link shareLink}, for a list of packs. */
export const packsLink = (document: PacksDocument, base: URL): Promise<SharedLink> =>
  linkOf('packs', document, base)

async function linkOf(kind: LinkKind, value: object, base: URL): Promise<SharedLink> {
  if (!canDeflate())
    return refuse('This browser cannot pack this into a link: update it, or save a file instead.')
  const json = new TextEncoder().encode(JSON.stringify(value))
  if (json.length > SHARE_CAPS.unpackedBytes) return refuse(TOO_LONG)
  const packed = await deflate(json)
  const fragment = `${kind}=${LINK_VERSION}.${toBase64url(sealed(packed, crc32(json)))}`
  if (fragment.length > SHARE_CAPS.fragmentChars) return refuse(TOO_LONG)
  const link = new URL(base)
  link.search = ''
  link.hash = fragment
  return { ok: true, link: link.href }
}

const TOO_LONG = `This is too long for a link (${countText(SHARE_CAPS.fragmentChars)} characters at most): save it as a file.`

const refuse = (message: string) => ({ ok: false, message }) as const

/** The packed bytes followed by their seal, low byte first. */
export function sealed(packed: Uint8Array, sum: number): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(packed.length + 4)
  bytes.set(packed)
  new DataView(bytes.buffer).setUint32(packed.length, sum, true)
  return bytes
}
