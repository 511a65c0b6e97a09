import type { Phrases } from '../phrase.ts';
import type { TopicRuleSentences } from '../subject/topic-rule.ts';
import { quantityNames } from './detail.ts';

export const topicRule: Phrases<TopicRuleSentences> = {
  'in-rule': ({ faults }, _speak, say) => `I regeln: ${faults.map(say).join(' ')}`,
  'rule-twin': ({ pattern }) =>
    `En annan regel, ${pattern}, tar precis de här ämnena; ändra den i stället.`,
  'rule-without-value': () => 'Regeln ger inget mätvärde; säg vilken storhet den hittar.',
  'rule-text-one-value': () => 'Text innehåller ett tal, så regeln kan ge ett mätvärde.',
  'rule-same-quantity': ({ quantity, number }) =>
    `Den ger ${quantityNames[quantity]} från samma givare som nummer ${number}; ge en av dem en annan givare.`,
  'rule-pointer-not-json': () => 'En pekare hittar bara något i JSON; lämna den tom.',
  'rule-name-segment': () =>
    'Ange sista delen av postens namn, alltså det som kommer efter sista / eller : eller . i det.',
  'rule-name-not-senml': () => 'Ett namn hittar bara en post i SenML; lämna det tomt.',
  'rule-senml-unit': () => 'En SenML-post anger sin egen enhet; utelämna enheten.',
  'rule-senml-scale': () => 'En SenML-post anger sin egen enhet; låt faktorn vara 1.',
  'rule-senml-time': () => 'En SenML-post anger sin egen tid; utelämna tiden.',
  'rule-scale': ({ scale, mostScale }) =>
    `Faktorn är ${scale}; den kan inte vara 0 och inte större än ${mostScale}.`,
  'rule-time-in-text': () => 'Text innehåller bara ett tal; tiden kan bara vara en del av ämnet.',
  'rule-time-nowhere': () => 'Säg var tiden står, till exempel /time, eller utelämna tiden.',
  'pattern-empty': () => 'Mönstret är tomt; ange ett ämne som farm/{sensor}/temperature.',
  'pattern-long': ({ letters }) => `Mönstret är längre än ${letters} tecken.`,
  'pattern-controls': () => 'Mönstret har osynliga styrtecken; skriv det på nytt.',
  'pattern-dollar': () => 'Ett mönster kan inte börja med $: sådana ämnen tillhör MQTT-servern.',
  'pattern-levels': ({ levels }) => `Mönstret har fler än ${levels} nivåer.`,
  'pattern-rest': () => 'Ett # står för allt som återstår, så det kan bara vara sista nivån.',
  'pattern-sign': ({ word }) => `I nivån ${word} måste tecknet + eller # stå ensamt.`,
  'pattern-level': ({ word }) =>
    `Nivån ${word} förstås inte; en nivå kan ha en namngiven del som {sensor}, av bokstäver, siffror, _ och -.`,
  'pattern-part-twice': ({ word }) => `Delen ${word} står två gånger i mönstret.`,
  'pattern-own': ({ topic }) =>
    `Mönstret skulle också ta ${topic}, som den här anläggningen själv använder; sätt ett fast ord där ämnena skiljer sig.`,
  'template-empty': () => 'Givaren har inget namn; ange ett, eller en del av ämnet som {sensor}.',
  'template-letters': ({ word }) => `I ${word} kan bara A–Z a–z 0–9 . _ - stå i en givares namn.`,
  'template-brace': ({ word }) => `Ett ${word} står ensamt; skriv en del som {sensor} eller {/id}.`,
  'template-pointer': ({ word }) =>
    `${word} pekar in i JSON, men innehållet är inte JSON; använd en del av ämnet.`,
  'part-unknown': ({ word }) => `Det finns ingen del ${word} i mönstret.`,
  'part-unknown/of-some': ({ word, options }) =>
    `Det finns ingen del ${word} i mönstret; det har ${options.join(', ')}.`,
  'part-unknown/of-none': ({ word }) =>
    `Det finns ingen del ${word} i mönstret; ge en av dess nivåer det namnet.`,
  'pointer-fault/start': ({ pointer }) =>
    `Pekaren ${pointer} måste börja med / (eller vara tom, för hela innehållet).`,
  'pointer-fault/tilde': ({ pointer }) =>
    `Pekaren ${pointer} har ett ~ som inte följs av 0 eller 1; skriv ~0 för själva ~.`,
  'pointer-fault/deep': ({ pointer, levels }) =>
    `Pekaren ${pointer} går djupare än ${levels} nivåer.`,
  'listen-failed': ({ because }) => `MQTT-servern gick inte att fråga: ”${because}”.`,
  'listen-ended': () => 'MQTT-servern avslutade anslutningen.',
  'listen-refused': () => 'MQTT-servern låter inte vår användare lyssna på alla ämnen (#).',
};
