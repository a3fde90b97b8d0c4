// The doors to what fills the gear many things at a time; each is fetched when it is opened, and keeps what is in it.

import { later } from '../../components/frame'
import { Doors } from '../../components/pieces'
import { openTrip } from '../../store'

const PasteList = later(async () => (await import('./PasteList')).PasteList)
const ImportTable = later(async () => (await import('../csv')).ImportTable)
const SaveTable = later(async () => (await import('../csv')).SaveTable)
const FoodMixer = later(async () => (await import('./FoodMixer')).FoodMixer)

const LIST = 'Paste a list'
const TABLE = 'Import a table'

export function ListDoors() {
  const trip = openTrip.value?.id
  return (
    <section class="doors" aria-labelledby="list-doors">
      <h3 id="list-doors">Lists and tables</h3>
      <Doors
        doors={[
          { label: LIST, draw: go => <PasteList key={trip} onTable={() => go(TABLE)} /> },
          { label: TABLE, draw: go => <ImportTable key={trip} onList={() => go(LIST)} /> },
          { label: 'Mix a day’s food', draw: () => <FoodMixer key={trip} /> },
          { label: 'Save as a table', draw: () => <SaveTable key={trip} /> },
        ]}
      />
    </section>
  )
}
