import type { ThingNames } from '../thing-names.ts';

export const names: ThingNames = {
  placeKinds: {
    rack: 'ställ',
    room: 'rum',
    wall: 'vägg',
    outdoors: 'utomhus',
  },
  facings: {
    north: 'norr',
    east: 'öster',
    south: 'söder',
    west: 'väster',
  },
  species: {
    'scots-pine': 'furu',
    'norway-spruce': 'gran',
    'douglas-fir': 'douglasgran',
    larch: 'lärk',
    other: 'annat virke',
  },
  surfaces: {
    sawn: 'sågad',
    planed: 'hyvlad',
  },
  mixtureParts: {
    paint: 'färg',
    rawLinseedOil: 'rå linolja',
    turpentine: 'terpentin',
  },
  quantities: {
    'air-temperature': 'lufttemperatur',
    'relative-humidity': 'relativ fuktighet',
    'surface-temperature': 'yttemperatur',
    'wood-moisture': 'fuktkvot',
    'wood-resistance': 'resistans i virket',
    'carbon-dioxide': 'koldioxid',
    battery: 'batteri',
  },
};
