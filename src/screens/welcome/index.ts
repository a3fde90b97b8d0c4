export { loadDemo } from './load'
export { Welcome } from './Welcome'
