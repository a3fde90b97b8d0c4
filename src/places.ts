// The places of an open trip, what opens from each, and where a stored screen is shown.

export const PLACES = [
  { screen: 'trip', label: 'Trip' },
  { screen: 'gear', label: 'Gear' },
  { screen: 'need', label: 'Need' },
  { screen: 'packs', label: 'Packs' },
] as const
export type Place = (typeof PLACES)[number]['screen']

/** Reached from the gear and shown in its place; at a desk beside the gear that it fills. */
export const SHELF = 'shelf'

/** The packs apart from any trip. */
const OWN_PACKS = 'own-packs'

/** Of several people: who carries what. */
export const SPLIT = 'split'

/** How it works. */
export const HELP = 'help'

/** What is opened without a trip too. */
export const ALONE: readonly string[] = [SHELF, OWN_PACKS, HELP]

/** Screens that open from a place and are shown where it is; at a desk they are listed beneath the places. */
export const FROM_PLACES: readonly { screen: string; at: Place; label: string }[] = [
  { screen: 'shop', at: 'packs', label: 'At the shop' },
  { screen: 'all-trips', at: 'packs', label: 'All my trips' },
  { screen: 'packs-beside', at: 'packs', label: 'Packs side by side' },
  { screen: 'side-by-side', at: 'packs', label: 'Side by side' },
  { screen: OWN_PACKS, at: 'packs', label: 'My packs' },
  { screen: 'packing-day', at: 'trip', label: 'Packing day' },
  { screen: 'on-the-way', at: 'trip', label: 'On the way' },
  { screen: 'after-trip', at: 'trip', label: 'After the trip' },
  { screen: SHELF, at: 'gear', label: 'Shelf' },
  { screen: SPLIT, at: 'gear', label: 'Who carries what' },
  { screen: 'calibrate', at: 'need', label: 'Your own packing' },
]

/** The place of a stored screen; that of an unknown one is the trip. */
export const placeOfScreen = (stored: string): Place =>
  FROM_PLACES.find(({ screen }) => screen === stored)?.at ??
  PLACES.find(({ screen }) => screen === stored)?.screen ??
  'trip'

/** What else is shown over the whole page, by what `App` calls it. */
const APART: Readonly<Record<string, string>> = {
  more: 'Trips and settings',
  sheet: 'Sheet',
  [HELP]: 'How it works',
  file: 'A file',
  link: 'A shared trip',
}

/** The name of what is shown; undefined for the welcome. */
export const nameOfScreen = (shown: string): string | undefined =>
  [...PLACES, ...FROM_PLACES].find(({ screen }) => screen === shown)?.label ?? APART[shown]
