// The need and the place reached from it, fetched when it is first opened.

import { later } from '../../components/frame'
import { library } from '../../store'
import { NeedScreen } from './NeedScreen'

const CalibrateScreen = later(async () => (await import('../calibrate')).CalibrateScreen)

export function NeedPlace() {
  return library.value.place.screen === 'calibrate' ? <CalibrateScreen /> : <NeedScreen />
}
