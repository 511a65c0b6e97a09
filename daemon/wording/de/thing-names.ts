import type { ThingNames } from '../thing-names.ts';

export const names: ThingNames = {
  placeKinds: {
    rack: 'Gestell',
    room: 'Raum',
    wall: 'Hauswand',
    outdoors: 'im Freien',
  },
  facings: {
    north: 'Nord',
    east: 'Ost',
    south: 'Süd',
    west: 'West',
  },
  species: {
    'scots-pine': 'Kiefer',
    'norway-spruce': 'Fichte',
    'douglas-fir': 'Douglasie',
    larch: 'Lärche',
    other: 'anderes Holz',
  },
  surfaces: {
    sawn: 'sägerau',
    planed: 'gehobelt',
  },
  mixtureParts: {
    paint: 'Farbe',
    rawLinseedOil: 'rohes Leinöl',
    turpentine: 'Terpentinöl',
  },
  quantities: {
    'air-temperature': 'Lufttemperatur',
    'relative-humidity': 'relative Luftfeuchte',
    'surface-temperature': 'Oberflächentemperatur',
    'wood-moisture': 'Holzfeuchte',
    'wood-resistance': 'Widerstand im Holz',
    'carbon-dioxide': 'Kohlendioxid',
    battery: 'Batterie',
  },
};
