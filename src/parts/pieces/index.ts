export { Cautions } from './Cautions'
export { Doors } from './Doors'
export { LeftOut } from './LeftOut'
export { Row, type RowActions } from './Row'
