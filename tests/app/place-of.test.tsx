// From a field's path to the place where it is changed, whatever stands in the ids.

import { cleanup, render, screen } from '@testing-library/preact'
import { afterEach, expect, test } from 'vitest'
import { placeOf } from '../../src/components/frame'
import { emptyDraft, fieldPath } from '../../src/plan'
import { GearScreen } from '../../src/screens/gear'
import { actions } from '../../src/store'

afterEach(cleanup)

test.each(['a', 'a/b', 'a~b', 'my bottle 100%', '~1'])('a field of the thing “%s” opens that thing', id => {
  actions.createTrip({ ...emptyDraft(), gear: [{ id, name: 'Bottle', massKg: 0.1, litres: 1 }] })
  const { screen: place, detail } = placeOf(fieldPath('gear', id, 'massKg'))
  expect(place).toBe('gear')
  render(<GearScreen detail={detail} onDetail={() => undefined} />)
  expect(screen.getByLabelText('Name')).toBeTruthy()
})

test('a field of a stop or a pack leads to its entry, another to its screen', () => {
  expect(placeOf(fieldPath('trip', 'stops', 'a/b', 'leg', 'km')).detail).toBe('trip/stops/a/b')
  expect(placeOf(fieldPath('packs', 'p/1', 'bodyLitres')).detail).toBe('packs/p/1')
  expect(placeOf('trip/water/campLitres')).toEqual({ screen: 'trip', detail: null })
})
