import type { ThingNames } from '../thing-names.ts';

export const names: ThingNames = {
  placeKinds: {
    rack: 'teline',
    room: 'huone',
    wall: 'seinä',
    outdoors: 'ulkona',
  },
  facings: {
    north: 'pohjoinen',
    east: 'itä',
    south: 'etelä',
    west: 'länsi',
  },
  species: {
    'scots-pine': 'mänty',
    'norway-spruce': 'kuusi',
    'douglas-fir': 'douglaskuusi',
    larch: 'lehtikuusi',
    other: 'muu puu',
  },
  surfaces: {
    sawn: 'sahattu',
    planed: 'höylätty',
  },
  mixtureParts: {
    paint: 'maali',
    rawLinseedOil: 'raakapellavaöljy',
    turpentine: 'tärpätti',
  },
  quantities: {
    'air-temperature': 'ilman lämpötila',
    'relative-humidity': 'suhteellinen kosteus',
    'surface-temperature': 'pintalämpötila',
    'wood-moisture': 'puun kosteus',
    'wood-resistance': 'puun vastus',
    'carbon-dioxide': 'hiilidioksidi',
    battery: 'paristo',
  },
};
