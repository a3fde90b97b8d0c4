// The doors from the shelf to a spreadsheet and back; each is fetched when it is opened.

import { later } from '../../parts/frame'
import { Doors } from '../../parts/pieces'

const ImportTable = later(async () => (await import('../csv')).ImportTable)
const SaveTable = later(async () => (await import('../csv')).SaveTable)

export const TableDoors = () => (
  <Doors
    doors={[
      { label: 'Import a table', draw: () => <ImportTable to="shelf" /> },
      { label: 'Save as a table', draw: () => <SaveTable /> },
    ]}
  />
)
