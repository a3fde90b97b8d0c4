// The doors from the shelf to a spreadsheet and back; each is fetched when it is opened.

import { later } from '../../components/frame'
import { Doors } from '../../components/pieces'

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
