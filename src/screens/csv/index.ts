// Tables in and out; loaded when a door to one is opened.

export { ImportPacks } from './ImportPacks'
export { ImportTable } from './ImportTable'
export { ReceivedTable } from './ReceivedTable'
export { SaveTable } from './SaveTable'
