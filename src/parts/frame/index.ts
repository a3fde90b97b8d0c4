export { Header } from './Header'
export { Notices } from './Notices'
export { Ticker } from './Ticker'
