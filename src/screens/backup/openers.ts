// Which reader opens what the app has told apart: one line for each kind of file that has a reader of its own.

import type { ComponentType } from 'preact'
import { later } from '../../components/frame'
import type { OpenerProps } from './types'

export const OPENERS: Readonly<Record<'track' | 'table', ComponentType<OpenerProps>>> = {
  track: later(async () => (await import('./Track')).Track),
  table: later(async () => (await import('../csv')).ReceivedTable),
}
