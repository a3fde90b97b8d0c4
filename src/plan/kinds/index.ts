// Generic kinds of gear, apart from the rest of the plan so that the table is loaded only where it is asked for.

export { applyKind, itemOfKind, litresOfKind, oddMass } from './apply'
export { type Suggestion, suggestKinds } from './match'
export { buildOf, type Kind, kindNamed, kinds, originInShort, originText, placeOf } from './table'
export { wordsOf } from './words'
