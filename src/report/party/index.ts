export { type PartyCaution, partyCautions } from './cautions'
export { type PartyTold, partyTold } from './told'
export { childrenFirst, fairnessLines, loadLine, nameIn } from './words'
