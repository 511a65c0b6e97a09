import type { Quantity } from '../../contract/quantity.ts';
import type { Inner, Nothing } from '../phrase.ts';

/** What is wrong with a topic rule, and why listening for topics did not work. */
export interface TopicRuleSentences {
  /** `faults`: each a `field-at`. */
  'in-rule': { faults: Inner[] };
  'rule-twin': { pattern: string };
  'rule-without-value': Nothing;
  'rule-text-one-value': Nothing;
  /** `number`: of the value that came first, counted from 1. */
  'rule-same-quantity': { quantity: Quantity; number: number };
  'rule-pointer-not-json': Nothing;
  'rule-name-segment': Nothing;
  'rule-name-not-senml': Nothing;
  'rule-senml-unit': Nothing;
  'rule-senml-scale': Nothing;
  'rule-senml-time': Nothing;
  'rule-scale': { scale: string; mostScale: string };
  'rule-time-in-text': Nothing;
  'rule-time-nowhere': Nothing;
  'pattern-empty': Nothing;
  'pattern-long': { letters: number };
  'pattern-controls': Nothing;
  'pattern-dollar': Nothing;
  'pattern-levels': { levels: number };
  'pattern-rest': Nothing;
  'pattern-sign': { word: string };
  'pattern-level': { word: string };
  'pattern-part-twice': { word: string };
  'pattern-own': { topic: string };
  'template-empty': Nothing;
  'template-letters': { word: string };
  'template-brace': { word: string };
  'template-pointer': { word: string };
  'part-unknown': { word: string };
  'part-unknown/of-some': { word: string; options: string[] };
  'part-unknown/of-none': { word: string };
  'pointer-fault/start': { pointer: string };
  'pointer-fault/tilde': { pointer: string };
  'pointer-fault/deep': { pointer: string; levels: number };
  'listen-failed': { because: string };
  'listen-ended': Nothing;
  'listen-refused': Nothing;
}
