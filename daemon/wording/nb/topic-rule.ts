import type { Phrases } from '../phrase.ts';
import type { TopicRuleSentences } from '../subject/topic-rule.ts';
import { quantityNames } from './detail.ts';

export const topicRule: Phrases<TopicRuleSentences> = {
  'in-rule': ({ faults }, _speak, say) => `I regelen: ${faults.map(say).join(' ')}`,
  'rule-twin': ({ pattern }) =>
    `En annen regel, ${pattern}, tar akkurat disse emnene; endre den i stedet.`,
  'rule-without-value': () => 'Regelen gir ingen måling; si hvilken størrelse den finner.',
  'rule-text-one-value': () => 'Tekst inneholder ett tall, så regelen kan gi én måling.',
  'rule-same-quantity': ({ quantity, number }) =>
    `Den gir ${quantityNames[quantity]} fra samme sensor som nummer ${number}; gi en av dem en annen sensor.`,
  'rule-pointer-not-json': () => 'En peker finner bare noe i JSON; la den stå tom.',
  'rule-name-segment': () =>
    'Oppgi siste del av postens navn, altså det som kommer etter siste / eller : eller . i det.',
  'rule-name-not-senml': () => 'Et navn finner bare en post i SenML; la det stå tomt.',
  'rule-senml-unit': () => 'En SenML-post oppgir sin egen enhet; utelat enheten.',
  'rule-senml-scale': () => 'En SenML-post oppgir sin egen enhet; la faktoren være 1.',
  'rule-senml-time': () => 'En SenML-post oppgir sin egen tid; utelat tiden.',
  'rule-scale': ({ scale, mostScale }) =>
    `Faktoren er ${scale}; den kan ikke være 0 og ikke større enn ${mostScale}.`,
  'rule-time-in-text': () => 'Tekst inneholder bare et tall; tiden kan bare være en del av emnet.',
  'rule-time-nowhere': () => 'Si hvor tiden står, for eksempel /time, eller utelat tiden.',
  'pattern-empty': () => 'Mønsteret er tomt; oppgi et emne som farm/{sensor}/temperature.',
  'pattern-long': ({ letters }) => `Mønsteret er lengre enn ${letters} tegn.`,
  'pattern-controls': () => 'Mønsteret har usynlige styretegn; skriv det på nytt.',
  'pattern-dollar': () => 'Et mønster kan ikke begynne med $: slike emner hører til MQTT-tjeneren.',
  'pattern-levels': ({ levels }) => `Mønsteret har flere enn ${levels} nivåer.`,
  'pattern-rest': () => 'En # står for alt som er igjen, så den kan bare være siste nivå.',
  'pattern-sign': ({ word }) => `I nivået ${word} må tegnet + eller # stå alene.`,
  'pattern-level': ({ word }) =>
    `Nivået ${word} forstås ikke; et nivå kan ha én navngitt del som {sensor}, av bokstaver, sifre, _ og -.`,
  'pattern-part-twice': ({ word }) => `Delen ${word} står to ganger i mønsteret.`,
  'pattern-own': ({ topic }) =>
    `Mønsteret ville også ta ${topic}, som dette anlegget selv bruker; sett et fast ord der emnene skiller seg.`,
  'template-empty': () =>
    'Sensoren har ikke noe navn; oppgi ett, eller en del av emnet som {sensor}.',
  'template-letters': ({ word }) =>
    `I ${word} kan bare A–Z a–z 0–9 . _ - stå i navnet på en sensor.`,
  'template-brace': ({ word }) => `En ${word} står alene; skriv en del som {sensor} eller {/id}.`,
  'template-pointer': ({ word }) =>
    `${word} peker inn i JSON, men innholdet er ikke JSON; bruk en del av emnet.`,
  'part-unknown': ({ word }) => `Det finnes ingen del ${word} i mønsteret.`,
  'part-unknown/of-some': ({ word, options }) =>
    `Det finnes ingen del ${word} i mønsteret; det har ${options.join(', ')}.`,
  'part-unknown/of-none': ({ word }) =>
    `Det finnes ingen del ${word} i mønsteret; gi et av nivåene det navnet.`,
  'pointer-fault/start': ({ pointer }) =>
    `Pekeren ${pointer} må begynne med / (eller være tom, for hele innholdet).`,
  'pointer-fault/tilde': ({ pointer }) =>
    `Pekeren ${pointer} har en ~ som ikke følges av 0 eller 1; skriv ~0 for selve ~.`,
  'pointer-fault/deep': ({ pointer, levels }) =>
    `Pekeren ${pointer} går dypere enn ${levels} nivåer.`,
  'listen-failed': ({ because }) => `MQTT-tjeneren kunne ikke spørres: «${because}».`,
  'listen-ended': () => 'MQTT-tjeneren avsluttet forbindelsen.',
  'listen-refused': () => 'MQTT-tjeneren lar ikke vår bruker lytte til alle emner (#).',
};
