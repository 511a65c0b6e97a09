import type { Phrases } from '../phrase.ts';
import type { RemarkSentences } from '../subject/remark.ts';

export const remark: Phrases<RemarkSentences> = {
  'cure-wrinkled/wait': () =>
    'It went on too thick: the skin closed over a soft film. Wait until it is firm through, days to weeks.',
  'cure-wrinkled/scrape': () =>
    'Scrape the wrinkles off, do not sand them hot. Old paint may hold lead: test first.',
  'cure-wrinkled/thinner': () => 'Coat again, thinner, and brush it out longer.',
  'cure-runs/while-soft': () => 'While they are soft: brush them out upwards.',
  'cure-runs/once-set': () =>
    'Once they have set: wait until they are firm, cut them off with a sharp scraper, and coat the spot thin.',
  'cure-dull/feed': () =>
    'Dull means starved: the wood drank the oil. Feed it with another thin coat.',
  'cure-dull/spots-first': () =>
    'Dull spots alone: coat them first, the whole face after they are dry.',
  'cure-glossy/wait': () =>
    'Glossy means fat: too much oil lies on top and stays soft for long. Wait until a thumbnail leaves no mark.',
  'cure-glossy/rub-matt': () =>
    'Rub it matt before the next coat so that it holds, and go thinner.',
  'cure-got-wet/dry': () => 'Let it dry in moving air, out of the sun.',
  'cure-got-wet/look': () =>
    'Then look for dull spots and bleaching before you go on; feed what is dull.',
  'cure-dew-night/dry': () => 'Let it dry off by itself; do not rub wet paint.',
  'cure-dew-night/look': () =>
    'Then look for dull spots and bleaching before you go on; feed what is dull.',
  'cure-bleached/cure-through': () =>
    'Water stood on it while it was soft. Let it cure through, rub it matt, and coat again.',
  'cure-still-standing/brush-out': () =>
    'Brush it out over the dry places, or wipe it off with a rag along the grain, within the hour.',
  'cure-still-standing/rags': () =>
    'Lay the rags out flat outdoors or put them under water in a lidded metal can: they heat up by themselves.',
  'cure-wiped-off/rags': () =>
    'Oily rags heat up by themselves: out flat outdoors, or under water in a lidded can.',
  'cure-sunk-in/fine': () => 'As it should be. Give it its time.',
  'cure-clogged/stop': () =>
    'It is not through-dry: stop, or the paper drags the film off. Give it days, then try an edge again.',
  'cure-clogged/dust': () =>
    'Wet the dust down or draw it off, and wear a mask. Old paint may hold lead: test first.',
  'cure-sanded/tell': () =>
    'Say tomorrow whether it dusted or clogged: that teaches what this paint needs.',
  'cure-sanded/dust': () =>
    'Sanding dust soaked in oil can catch fire: out of doors with it, wetted, in a lidded metal can.',
  'dew-night': ({ placeName, tempC, rhPercent }, speak) =>
    `By the air at ${placeName}, water may have stood on it: ${speak.temperature(tempC)} and ${speak.humidity(rhPercent)} humidity.`,
};
