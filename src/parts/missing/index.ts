export { MissingFigures } from './MissingFigures'
