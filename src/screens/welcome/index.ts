export { EmptyApp } from './EmptyApp'
export { loadDemo } from './load'
