// The need and the place reached from it, fetched when it is first opened.

import { later } from '../../components/frame'
import { library } from '../../store'
import { NeedScreen } from './NeedScreen'

const CalibrateScreen = later(async () => (await import('../calibrate')).CalibrateScreen)

/** `isDesk`: the answer stands at the side. */
export function NeedPlace({ isDesk }: { isDesk: boolean }) {
  return library.value.place.screen === 'calibrate' ? <CalibrateScreen /> : <NeedScreen isDesk={isDesk} />
}
