// The rows of a pack and its set-ups.

import { CAPS } from '../caps'
import type * as types from '../types'
import { amount, choice, list, named, type RowsFor, text, truth } from './rows'

export const bodyFrom = choice(
  {
    'test-method': ['By test method', 'by a test method'],
    measured: 'Measured',
    stated: 'Stated',
    guess: 'Guessed',
  },
  { usual: 'stated', label: 'Main body litres are', column: { label: 'The litres are' } },
)

export const setup = {
  name: text({ ...named, label: 'Name of the set-up', column: { label: 'Set-up' } }),
  massKg: amount('mass', 0.01, 20, 'kg', { need: true, fine: true, label: 'Mass' }),
  frame: choice({ framed: ['With frame', 'framed'], frameless: 'Frameless' }, { need: true, label: 'Frame' }),
  ratedKg: amount('mass', 0.1, 200, 'kg', {
    label: 'Rated load',
    hint: 'What its maker says it carries. Empty: not known.',
    column: { label: 'Load rating' },
  }),
  ratingCovers: choice(
    { 'contents-and-pack': 'Contents and pack', contents: 'Contents' },
    { usual: 'contents-and-pack', label: 'The rating covers' },
  ),
} satisfies RowsFor<types.Setup>

export const pack = {
  name: text({ ...named, label: 'Name', column: { label: 'Pack' } }),
  bodyLitres: amount('volume', 1, 300, 'L', {
    depends: true,
    label: 'Main body',
    hint: 'The main body alone, not the advertised total.',
  }),
  totalLitres: amount('volume', 1, 500, 'L', { depends: true }),
  collarLitres: amount('volume', 0, 100, 'L', {
    usual: 0,
    label: 'Collar above the brim',
    column: { label: 'Collar' },
  }),
  outsideLitres: amount('volume', 0, 200, 'L', {
    label: 'Pockets',
    hint: 'All outside pockets together. Empty: not judged.',
    column: { label: 'Outside' },
  }),
  bodyFrom,
  sealed: truth({
    usual: false,
    label: 'Waterproof with sealed seams: needs no liner',
    column: { label: 'Sealed' },
  }),
  fabric: text({ label: 'Fabric' }),
  denier: amount('number', 1, 5000, 'denier', { label: 'Denier' }),
  price: amount('money', 0, 1e7, 'in its currency', { label: 'Price' }),
  currency: text({ label: 'Currency' }),
  innerHeightCm: amount('length', 5, 250, 'cm', { label: 'Inner height' }),
  innerWidthCm: amount('length', 3, 150, 'cm', { label: 'Inner width' }),
  innerDepthCm: amount('length', 3, 150, 'cm', { label: 'Inner depth' }),
  section: choice(
    { ellipse: 'Oval', rectangle: 'With corners' },
    {
      usual: 'ellipse',
      origin: 'our judgement, as soft sides round out',
      label: 'Cut across, the inside is',
    },
  ),
  setups: list(setup, { least: 1, most: CAPS.setups, what: 'set-ups' }, { need: true }),
} satisfies RowsFor<types.Pack & { totalLitres: number }>
