export { partyCautions } from './cautions'
export { childrenFirst, fairnessLines, loadLine, nameIn } from './words'
