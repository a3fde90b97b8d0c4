// Measuring at home, apart from the rest of the report so that it is loaded only where it is asked for.

export { countsAs, countsText, digitsWorth } from './counts'
export { type Method, methods, type Reading } from './methods'
export { type Fill, insulationLimit, type Squeeze, squeezed, squeezeStanding } from './squeezed'
