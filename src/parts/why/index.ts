export { toField, Why } from './Why'
