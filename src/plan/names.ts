// What things are called, and what those are called that have no name yet.

interface Named {
  name?: string | undefined
}

export const tripName = ({ name }: Named): string => name?.trim() || 'Trip without a name'
export const itemName = ({ name }: Named): string => name?.trim() || 'Unnamed item'
/** `index`: its place in the list of packs. */
export const packName = ({ name }: Named, index: number): string => name || `Pack ${index + 1}`
export const setupName = ({ name }: Named, index: number): string => name || `Set-up ${index + 1}`
