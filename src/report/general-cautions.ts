// What holds on every trip of its kind, whatever its figures: each sentence once, for the reports and the help.

import type { Caution } from './caution'

export const GENERAL_LINE =
  'An estimate from published averages and rules of thumb, not medical advice. Your body and a health professional overrule it. So do your guide, local rules and the pack maker’s stated maximum.'

/** Stands once above a list of packs, and on each pack's own page. */
export const FIT_LINE = 'No answer here judges how a pack fits your back and hips: try it on, loaded.'

/** On every trip. */
export const TREAT_WATER: Caution = {
  signal: 'CAUTION',
  about: 'water',
  text: 'Water found outdoors can make you ill, however clear it is: treat all of it before you drink.',
}

/** Where water is carried. */
export const ASK_ABOUT_WATER: Caution = {
  signal: 'NOTICE',
  about: 'water',
  text: 'Ask the land manager about every water source before you leave. Plan for one that is dry. Room to carry is not a drinking target: drink to thirst, and eat salty food on long hot days.',
}

/** With any pack. */
export const STOP_AT_PAIN: Caution = {
  signal: 'CAUTION',
  about: 'load',
  text: 'With any pack, stop at pain in back, hips or knees. Stop if arms or hands tingle or go numb. Take the pack off, refit or lighten it.',
}

/** Where food lies out at night. */
export const FOOD_DRAWS_ANIMALS: Caution = {
  signal: 'CAUTION',
  about: 'food',
  text: 'Food draws bears and other animals that can hurt you. How to store it is law in many places: follow the land manager’s current order. Toiletries and rubbish count as food.',
}

/** All of them, for who reads them together. */
export const GENERAL_CAUTIONS: readonly Caution[] = [
  TREAT_WATER,
  ASK_ABOUT_WATER,
  STOP_AT_PAIN,
  FOOD_DRAWS_ANIMALS,
]
