// The app's words that a stranger may not know, a sentence each.

export interface Term {
  word: string
  says: string
}

export const GLOSSARY: readonly Term[] = [
  { word: 'Main body', says: 'The big room inside, without pockets and collar.' },
  { word: 'Collar', says: 'Cloth above the brim, for some litres more.' },
  { word: 'Pockets', says: 'Room outside, for items you put there.' },
  { word: 'Frame', says: 'What brings the load from shoulders to hips.' },
  { word: 'Liner', says: 'A bag inside that keeps rain out.' },
  { word: 'Rated load', says: 'The most a pack carries, by its maker.' },
  { word: 'Set-up', says: 'A pack in one form: frame in, or frame out.' },
  { word: 'Base weight', says: 'Gear carried, without food, fuel, water and pack.' },
  { word: 'Heaviest load', says: 'The most carried at any moment.' },
  { word: 'Worn', says: 'On you or in hand: in no load.' },
  { word: 'Leg', says: 'The way on foot from stop to stop.' },
  { word: 'Water source', says: 'A stop with water that you count on.' },
  { word: 'Stretch', says: 'The way between two water sources.' },
  { word: 'Reserve', says: 'Water still left at its end.' },
  { word: 'Resupply', says: 'A stop where food is bought again.' },
  { word: 'Ration', says: 'One day’s food.' },
  { word: 'Spare rations', says: 'Food carried to the end, for a delay.' },
  { word: 'Rigid', says: 'Keeps its shape, like a pot.' },
  { word: 'Soft', says: 'Takes the shape of its room, like clothes.' },
  { word: 'WBGT', says: 'Heat as one figure, from air and humidity.' },
  { word: 'Shelf', says: 'All you own, kept for all trips.' },
  { word: 'Kit', says: 'Items that go together.' },
]
