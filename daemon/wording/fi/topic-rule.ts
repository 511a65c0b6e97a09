import type { Phrases } from '../phrase.ts';
import type { TopicRuleSentences } from '../subject/topic-rule.ts';
import { quantityNames } from './detail.ts';

export const topicRule: Phrases<TopicRuleSentences> = {
  'in-rule': ({ faults }, _speak, say) => `Säännössä: ${faults.map(say).join(' ')}`,
  'rule-twin': ({ pattern }) =>
    `Toinen sääntö, ${pattern}, ottaa täsmälleen nämä aiheet; muuta sitä.`,
  'rule-without-value': () => 'Sääntö ei tuota lukemaa; kerro, minkä suureen se löytää.',
  'rule-text-one-value': () => 'Tekstissä on yksi luku, joten sääntö voi tuottaa yhden lukeman.',
  'rule-same-quantity': ({ quantity, number }) =>
    `Se tuottaa saman suureen (${quantityNames[quantity]}) samasta anturista kuin numero ${number}; anna toiselle niistä toinen anturi.`,
  'rule-pointer-not-json': () => 'Osoitin löytää jotain vain JSONista; jätä se tyhjäksi.',
  'rule-name-segment': () =>
    'Anna tietueen nimen viimeinen osa eli se, mikä tulee viimeisen merkin / tai : tai . jälkeen.',
  'rule-name-not-senml': () => 'Nimi löytää vain SenML-tietueen; jätä se tyhjäksi.',
  'rule-senml-unit': () => 'SenML-tietue kertoo yksikkönsä itse; jätä yksikkö pois.',
  'rule-senml-scale': () => 'SenML-tietue kertoo yksikkönsä itse; jätä kertoimeksi 1.',
  'rule-senml-time': () => 'SenML-tietue kertoo aikansa itse; jätä aika pois.',
  'rule-scale': ({ scale, mostScale }) =>
    `Kerroin on ${scale}; se ei voi olla 0 eikä suurempi kuin ${mostScale}.`,
  'rule-time-in-text': () => 'Tekstissä on pelkkä luku; aika voi olla vain aiheen osa.',
  'rule-time-nowhere': () => 'Kerro, missä aika on, esimerkiksi /time, tai jätä aika pois.',
  'pattern-empty': () => 'Kaava on tyhjä; anna aihe kuten farm/{sensor}/temperature.',
  'pattern-long': ({ letters }) => `Kaava on pidempi kuin ${letters} merkkiä.`,
  'pattern-controls': () => 'Kaavassa on näkymättömiä ohjausmerkkejä; kirjoita se uudelleen.',
  'pattern-dollar': () => 'Kaava ei voi alkaa merkillä $: sellaiset aiheet kuuluvat välittäjälle.',
  'pattern-levels': ({ levels }) => `Kaavassa on enemmän kuin ${levels} tasoa.`,
  'pattern-rest': () =>
    'Merkki # tarkoittaa kaikkia loppuja, joten se voi olla vain viimeinen taso.',
  'pattern-sign': ({ word }) => `Tasossa ${word} merkin + tai # pitää olla yksin.`,
  'pattern-level': ({ word }) =>
    `Tasoa ${word} ei ymmärretä; tasossa voi olla yksi nimetty osa kuten {sensor}, jossa on kirjaimia, numeroita, _ ja -.`,
  'pattern-part-twice': ({ word }) => `Osa ${word} on kaavassa kahdesti.`,
  'pattern-own': ({ topic }) =>
    `Kaava ottaisi myös aiheen ${topic}, jota tämä kohde itse käyttää; pane kiinteä sana siihen, missä aiheet eroavat.`,
  'template-empty': () => 'Anturilla ei ole nimeä; anna nimi tai aiheen osa kuten {sensor}.',
  'template-letters': ({ word }) =>
    `Tekstissä ${word} vain merkit A–Z a–z 0–9 . _ - voivat olla anturin nimessä.`,
  'template-brace': ({ word }) => `Merkki ${word} on yksin; kirjoita osa kuten {sensor} tai {/id}.`,
  'template-pointer': ({ word }) =>
    `${word} osoittaa JSONiin, mutta sisältö ei ole JSONia; käytä aiheen osaa.`,
  'part-unknown': ({ word }) => `Kaavassa ei ole osaa ${word}.`,
  'part-unknown/of-some': ({ word, options }) =>
    `Kaavassa ei ole osaa ${word}; siinä on ${options.join(', ')}.`,
  'part-unknown/of-none': ({ word }) =>
    `Kaavassa ei ole osaa ${word}; anna jollekin sen tasolle tämä nimi.`,
  'pointer-fault/start': ({ pointer }) =>
    `Osoittimen ${pointer} pitää alkaa merkillä / (tai olla tyhjä, kun se on koko sisältö).`,
  'pointer-fault/tilde': ({ pointer }) =>
    `Osoittimessa ${pointer} on merkki ~, jota ei seuraa 0 tai 1; kirjoita ~0, kun tarkoitat merkkiä ~.`,
  'pointer-fault/deep': ({ pointer, levels }) =>
    `Osoitin ${pointer} menee syvemmälle kuin ${levels} tasoa.`,
  'listen-failed': ({ because }) => `Välittäjältä ei voitu kysyä: ”${because}”.`,
  'listen-ended': () => 'Välittäjä katkaisi yhteyden.',
  'listen-refused': () => 'Välittäjä ei anna käyttäjämme kuunnella kaikkia aiheita (#).',
};
