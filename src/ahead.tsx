// The empty app as text: written into the first page when it is built, so that it is there before any script.

import { renderToString } from 'preact-render-to-string'
import { EmptyApp } from './screens/welcome'

export const emptyApp = (): string => renderToString(<EmptyApp />)
