export { ChoiceField, type Option, SelectField, TextField, ToggleField } from './fields'
export { QuantityField } from './QuantityField'
export { UnitsChoice } from './UnitsChoice'
export { useSystem } from './useField'
