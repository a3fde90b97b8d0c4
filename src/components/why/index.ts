export { focusField, toField } from './focus-field'
export { Why } from './Why'
