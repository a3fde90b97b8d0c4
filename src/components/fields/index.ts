export { Choice } from './Choice'
export { Field } from './Field'
export { ChoiceField, type Option, TextField, ToggleField } from './fields'
export { Labelled } from './Labelled'
export { LooseField } from './LooseField'
export { QuantityField } from './QuantityField'
export {
  type Asked,
  askedFor,
  QuantityInput,
  QuantityText,
  type Reading,
  readQuantity,
} from './QuantityInput'
export { SelectOne } from './SelectOne'
export { textForm } from './text-form'
export { UnitsChoice } from './UnitsChoice'
export { useFormats } from './use-formats'
export { type Edited, EditedFields, useEdited, useField, useSystem } from './useField'
