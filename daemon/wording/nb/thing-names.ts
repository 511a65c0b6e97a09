import type { ThingNames } from '../thing-names.ts';

export const names: ThingNames = {
  placeKinds: {
    rack: 'reol',
    room: 'rom',
    wall: 'vegg',
    outdoors: 'utendørs',
  },
  facings: {
    north: 'nord',
    east: 'øst',
    south: 'sør',
    west: 'vest',
  },
  species: {
    'scots-pine': 'furu',
    'norway-spruce': 'gran',
    'douglas-fir': 'douglasgran',
    larch: 'lerk',
    other: 'annet treslag',
  },
  surfaces: {
    sawn: 'skåret',
    planed: 'høvlet',
  },
  mixtureParts: {
    paint: 'maling',
    rawLinseedOil: 'rå linolje',
    turpentine: 'terpentin',
  },
  quantities: {
    'air-temperature': 'lufttemperatur',
    'relative-humidity': 'relativ fuktighet',
    'surface-temperature': 'overflatetemperatur',
    'wood-moisture': 'trefuktighet',
    'wood-resistance': 'motstand i treet',
    'carbon-dioxide': 'karbondioksid',
    battery: 'batteri',
  },
};
