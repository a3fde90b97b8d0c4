export { SheetScreen } from './SheetScreen'
