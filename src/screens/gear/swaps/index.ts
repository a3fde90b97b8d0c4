export { Alternatives } from './Alternatives'
export { OrLine } from './OrLine'
export { takeThings } from './take'
