// The list of packs and the page of one: in each other's place, or at a wide desk side by side.

import { useLayoutEffect, useRef } from 'preact/hooks'
import { useMedia } from '../../components/frame'
import { actions, apart, edited, openTrip } from '../../store'
import { backToRow, type Left, leftFor } from './back-to-row'
import { PackPage } from './PackPage'
import { PacksScreen } from './PacksScreen'
import './packs.css'

/** From here the page stands beside the list. */
const BESIDE = '(min-width: 80rem)'

interface ListAndPageProps {
  detail: string | null
  isApart: boolean
  /** Wide enough for a table of all packs. */
  isDesk: boolean
}

export function ListAndPage({ detail, isApart, isDesk }: ListAndPageProps) {
  const isWide = useMedia(BESIDE)
  const { packs } = (isApart ? apart : edited).value.draft
  const pack = packs.find(({ id }) => detail === `packs/${id}`)
  const left = useRef<Left | null>(null)
  if (pack && left.current?.id !== pack.id) left.current = { id: pack.id, topPx: null }
  const go = (to: string | null) =>
    actions.setPlace({
      screen: isApart ? 'own-packs' : 'packs',
      detail: to && `packs/${to}`,
      scrollY: isWide ? scrollY : 0,
    })
  const open = (id: string) => {
    left.current = leftFor(id)
    go(id)
    if (!isWide) scrollTo(0, 0)
  }
  const close = () => go(null)
  const isOpen = pack !== undefined
  const wasOpen = useRef(isOpen)
  useLayoutEffect(() => {
    const isBack = wasOpen.current && !isOpen
    wasOpen.current = isOpen
    return isBack && left.current ? backToRow(left.current, { scrolls: !isWide }) : undefined
  }, [isOpen])

  const page = pack ? <PackPage pack={pack} isApart={isApart} onClose={close} /> : null
  const title = openTrip.value ? null : <h1 class="unseen">Pack Reckoner</h1>
  if (page && !isWide)
    return (
      <>
        {title}
        {page}
      </>
    )
  const list = (
    <PacksScreen {...{ isApart, isDesk }} open={left.current?.id ?? null} isBeside={isOpen} onOpen={open} />
  )
  return (
    <>
      {title}
      <div class={page ? 'list-and-page' : undefined}>
        {list}
        {page}
      </div>
    </>
  )
}
