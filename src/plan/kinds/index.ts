// Generic kinds of gear, apart from the rest of the plan so that the table is loaded only where it is asked for.

export { applyKind, isByMass, itemOfKind, litresOfKind, oddMass, withKindsLitres } from './apply'
export { type HighEnd, highEndOf, kindOf, typicalLitresOf } from './guess'
export { type Suggestion, suggestKinds } from './match'
export { isNameOfKind, type Kind, kindNamed, kinds, originInShort, originText } from './table'
export { withKindsEnds } from './unknown'
