import type { Phrases } from '../phrase.ts';
import type { TopicRuleSentences } from '../subject/topic-rule.ts';
import { quantityNames } from './detail.ts';

export const topicRule: Phrases<TopicRuleSentences> = {
  'in-rule': ({ faults }, _speak, say) => `In der Regel: ${faults.map(say).join(' ')}`,
  'rule-twin': ({ pattern }) =>
    `Eine andere Regel, ${pattern}, nimmt genau diese Topics; jene ändern.`,
  'rule-without-value': () => 'Die Regel ergibt keinen Messwert; sagen, welche Größe sie findet.',
  'rule-text-one-value': () =>
    'Text enthält eine Zahl, also kann die Regel einen Messwert ergeben.',
  'rule-same-quantity': ({ quantity, number }) =>
    `Sie ergibt dieselbe Größe (${quantityNames[quantity]}) desselben Sensors wie Nummer ${number}; einer davon einen anderen Sensor geben.`,
  'rule-pointer-not-json': () => 'Ein Zeiger findet nur in JSON etwas; leer lassen.',
  'rule-name-segment': () =>
    'Den letzten Teil des Namens des Eintrags angeben, also was nach dem letzten / oder : oder . darin kommt.',
  'rule-name-not-senml': () => 'Ein Name findet nur einen Eintrag von SenML; leer lassen.',
  'rule-senml-unit': () => 'Ein SenML-Eintrag nennt seine Einheit selbst; die Einheit weglassen.',
  'rule-senml-scale': () =>
    'Ein SenML-Eintrag nennt seine Einheit selbst; den Faktor auf 1 lassen.',
  'rule-senml-time': () => 'Ein SenML-Eintrag nennt seine Zeit selbst; die Zeit weglassen.',
  'rule-scale': ({ scale, mostScale }) =>
    `Der Faktor ist ${scale}; er darf weder 0 noch größer als ${mostScale} sein.`,
  'rule-time-in-text': () =>
    'Text enthält nur eine Zahl; die Zeit kann nur ein Teil des Topics sein.',
  'rule-time-nowhere': () =>
    'Sagen, wo die Zeit steht, zum Beispiel /time, oder die Zeit weglassen.',
  'pattern-empty': () => 'Das Muster ist leer; ein Topic angeben wie farm/{sensor}/temperature.',
  'pattern-long': ({ letters }) => `Das Muster ist länger als ${letters} Zeichen.`,
  'pattern-controls': () => 'Im Muster sind unsichtbare Steuerzeichen; neu eintippen.',
  'pattern-dollar': () => 'Ein Muster kann nicht mit $ beginnen: Solche Topics gehören dem Broker.',
  'pattern-levels': ({ levels }) => `Das Muster hat mehr als ${levels} Ebenen.`,
  'pattern-rest': () =>
    'Ein # steht für den ganzen Rest und kann deshalb nur die letzte Ebene sein.',
  'pattern-sign': ({ word }) => `In der Ebene ${word} muss das Zeichen + oder # allein stehen.`,
  'pattern-level': ({ word }) =>
    `Die Ebene ${word} wird nicht verstanden; eine Ebene kann einen benannten Teil wie {sensor} enthalten, aus Buchstaben, Ziffern, _ und -.`,
  'pattern-part-twice': ({ word }) => `Der Teil ${word} steht zweimal im Muster.`,
  'pattern-own': ({ topic }) =>
    `Das Muster nähme auch ${topic}, das diese Anlage selbst benutzt; ein festes Wort dort setzen, wo sich diese Topics unterscheiden.`,
  'template-empty': () =>
    'Der Sensor hat keinen Namen; einen angeben oder einen Teil des Topics wie {sensor}.',
  'template-letters': ({ word }) =>
    `In ${word} kann im Namen eines Sensors nur A–Z a–z 0–9 . _ - stehen.`,
  'template-brace': ({ word }) =>
    `Ein ${word} steht allein; einen Teil als {sensor} oder {/id} schreiben.`,
  'template-pointer': ({ word }) =>
    `${word} zeigt in JSON, der Inhalt ist aber keines; einen Teil des Topics nehmen.`,
  'part-unknown': ({ word }) => `Im Muster gibt es keinen Teil ${word}.`,
  'part-unknown/of-some': ({ word, options }) =>
    `Im Muster gibt es keinen Teil ${word}; es hat ${options.join(', ')}.`,
  'part-unknown/of-none': ({ word }) =>
    `Im Muster gibt es keinen Teil ${word}; eine seiner Ebenen so benennen.`,
  'pointer-fault/start': ({ pointer }) =>
    `Der Zeiger ${pointer} muss mit / beginnen (oder leer sein, für den ganzen Inhalt).`,
  'pointer-fault/tilde': ({ pointer }) =>
    `Der Zeiger ${pointer} hat ein ~, auf das weder 0 noch 1 folgt; ~0 für ~ selbst schreiben.`,
  'pointer-fault/deep': ({ pointer, levels }) =>
    `Der Zeiger ${pointer} geht tiefer als ${levels} Ebenen.`,
  'listen-failed': ({ because }) => `Der Broker ließ sich nicht fragen: „${because}“.`,
  'listen-ended': () => 'Der Broker hat die Verbindung beendet.',
  'listen-refused': () => 'Der Broker lässt unseren Benutzer nicht auf alle Topics (#) hören.',
};
