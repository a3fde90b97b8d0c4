export { toField } from './focus-field'
export { ToField } from './ToField'
export { Why } from './Why'
