export { PackTable } from './PackTable'
