// A second copy of what is saved, outside the database.
export { eraseFromCopy } from './manifest'
export { copyTurn, startSecondCopy } from './page'
export { openVault, type Vault } from './vault'
