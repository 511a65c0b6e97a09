import type { Phrases } from '../phrase.ts';
import type { TopicRuleSentences } from '../subject/topic-rule.ts';
import { quantityNames } from './detail.ts';

export const topicRule: Phrases<TopicRuleSentences> = {
  'in-rule': ({ faults }, _speak, say) => `In the rule: ${faults.map(say).join(' ')}`,
  'rule-twin': ({ pattern }) =>
    `Another rule, ${pattern}, takes exactly these topics; change that one.`,
  'rule-without-value': () => 'The rule makes no reading; say which quantity it finds.',
  'rule-text-one-value': () => 'Text holds one number, so the rule can make one reading.',
  'rule-same-quantity': ({ quantity, number }) =>
    `It makes ${quantityNames[quantity]} of the same sensor as number ${number}; give one of them another sensor.`,
  'rule-pointer-not-json': () => 'A pointer finds something in JSON only; leave it empty.',
  'rule-name-segment': () =>
    'Give the last segment of the record’s name, which is what comes after the last / or : or . in it.',
  'rule-name-not-senml': () => 'A name finds a record of SenML only; leave it empty.',
  'rule-senml-unit': () => 'A SenML record tells its own unit; leave the unit out.',
  'rule-senml-scale': () => 'A SenML record tells its own unit; leave the scale at 1.',
  'rule-senml-time': () => 'A SenML record tells its own time; leave the time out.',
  'rule-scale': ({ scale, mostScale }) =>
    `The scale is ${scale}; it cannot be 0 nor beyond ${mostScale}.`,
  'rule-time-in-text': () => 'Text holds a number alone; the time can only be a part of the topic.',
  'rule-time-nowhere': () => 'Say where the time stands, for example /time, or leave the time out.',
  'pattern-empty': () => 'The pattern is empty; give a topic such as farm/{sensor}/temperature.',
  'pattern-long': ({ letters }) => `The pattern is longer than ${letters} letters.`,
  'pattern-controls': () => 'The pattern has invisible control characters; type it anew.',
  'pattern-dollar': () => 'A pattern cannot begin with $: such topics belong to the broker.',
  'pattern-levels': ({ levels }) => `The pattern has more than ${levels} levels.`,
  'pattern-rest': () => 'A # stands for all the rest, so it can only be the last level.',
  'pattern-sign': ({ word }) => `In the level ${word} the sign + or # has to stand alone.`,
  'pattern-level': ({ word }) =>
    `The level ${word} is not understood; a level can hold one named part such as {sensor}, of letters, digits, _ and -.`,
  'pattern-part-twice': ({ word }) => `The part ${word} stands in the pattern twice.`,
  'pattern-own': ({ topic }) =>
    `The pattern would also take ${topic}, which this site uses itself; put a fixed word where these topics differ.`,
  'template-empty': () =>
    'The sensor has no name; give one, or a part of the topic such as {sensor}.',
  'template-letters': ({ word }) =>
    `In ${word} only A–Z a–z 0–9 . _ - can stand in a sensor’s name.`,
  'template-brace': ({ word }) => `A ${word} stands alone; write a part as {sensor} or {/id}.`,
  'template-pointer': ({ word }) =>
    `${word} points into JSON, but the payload is none; use a part of the topic.`,
  'part-unknown': ({ word }) => `There is no part ${word} in the pattern.`,
  'part-unknown/of-some': ({ word, options }) =>
    `There is no part ${word} in the pattern; it has ${options.join(', ')}.`,
  'part-unknown/of-none': ({ word }) =>
    `There is no part ${word} in the pattern; name a level of it so.`,
  'pointer-fault/start': ({ pointer }) =>
    `The pointer ${pointer} has to begin with / (or be empty, for the whole payload).`,
  'pointer-fault/tilde': ({ pointer }) =>
    `The pointer ${pointer} has a ~ that is not followed by 0 or 1; write ~0 for ~ itself.`,
  'pointer-fault/deep': ({ pointer, levels }) =>
    `The pointer ${pointer} goes deeper than ${levels} levels.`,
  'listen-failed': ({ because }) => `The broker could not be asked: “${because}”.`,
  'listen-ended': () => 'The broker ended the connection.',
  'listen-refused': () => 'The broker does not let our user listen to all topics (#).',
};
