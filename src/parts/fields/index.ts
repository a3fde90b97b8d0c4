export { ChoiceField, type Option, SelectField, TextField, ToggleField } from './fields'
export { QuantityField } from './QuantityField'
export { useSystem } from './useField'
