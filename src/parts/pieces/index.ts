export { Cautions } from './Cautions'
export { LeftOut } from './LeftOut'
export { Row, type RowActions } from './Row'
