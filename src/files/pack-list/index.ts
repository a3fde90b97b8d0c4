// Packs given on by themselves: as a file, or in a link.
export {
  type GivenPacks,
  givenPacks,
  PACKS_FORMAT,
  type PacksDocument,
  type ReadPacks,
  readPacks,
} from './pack-list'
