export { area, light, lit, markArea } from './lit'
export { PackChart } from './PackChart'
