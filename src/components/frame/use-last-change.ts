// What the last edit has changed, in words.

import { answersChanged, changeText } from '../../report'
import { lastChange } from '../../store'
import { counted } from '../../units'
import { useFormats } from '../fields'

import { useRested } from './use-rested'

/** `short`: "−0.6 kg, −2.8 L, 1 other answer"; `full`: with the pack and its answer. Empty where nothing is to be seen. */
export function useLastChange(): { short: string; full: string } {
  const formats = useFormats()
  const change = lastChange.value
  const isQuiet = useRested(change) === change
  if (!change) return { short: '', full: '' }
  const figures = changeText(change, formats)
  const answers = isQuiet ? change.answers : []
  return {
    short: joined([figures, answers.length > 0 ? counted(answers.length, 'other answer') : ''], ', '),
    full: joined([figures, ...answersChanged(answers)], '. '),
  }
}

const joined = (parts: string[], by: string) => parts.filter(Boolean).join(by)
