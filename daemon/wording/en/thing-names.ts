import type { ThingNames } from '../thing-names.ts';

export const names: ThingNames = {
  placeKinds: {
    rack: 'rack',
    room: 'room',
    wall: 'wall',
    outdoors: 'outdoors',
  },
  facings: {
    north: 'north',
    east: 'east',
    south: 'south',
    west: 'west',
  },
  species: {
    'scots-pine': 'Scots pine',
    'norway-spruce': 'Norway spruce',
    'douglas-fir': 'Douglas fir',
    larch: 'larch',
    other: 'another timber',
  },
  surfaces: {
    sawn: 'sawn',
    planed: 'planed',
  },
  mixtureParts: {
    paint: 'paint',
    rawLinseedOil: 'raw linseed oil',
    turpentine: 'turpentine',
  },
  quantities: {
    'air-temperature': 'air temperature',
    'relative-humidity': 'relative humidity',
    'surface-temperature': 'surface temperature',
    'wood-moisture': 'wood moisture',
    'wood-resistance': 'wood resistance',
    'carbon-dioxide': 'carbon dioxide',
    battery: 'battery',
  },
};
