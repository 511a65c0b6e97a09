import type { Said } from '../../daemon/contract/sentence.ts';
import { sentence } from '../../daemon/wording/english.ts';
import { atPointer, type JsonPointer, parsedPointer, pointerFault } from './json-pointer.ts';
import { because, type Refused, refuse, sent, shown } from './refusal.ts';
import type { TopicParts } from './topic-pattern.ts';

type Piece =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'part'; readonly name: string }
  | { readonly kind: 'pointer'; readonly text: string; readonly pointer: JsonPointer };

/** How the id of a sensor is made: fixed text, named parts of the topic and what pointers find. */
export type SensorTemplate = readonly Piece[];

export type SensorId = { readonly kind: 'sensor'; readonly sensor: string } | Refused;

const piece = /\{([^{}]*)\}|([^{}]+)|([{}])/g;
const idText = /^[A-Za-z0-9._-]*$/;
export const allowedSensorId = /^[A-Za-z0-9._-]{1,64}$/;
/** The part that stands for the name of a SenML record without its last segment. */
export const devicePart = 'device';

/**
 * Reads a template such as `{sensor}`, `attic-{room}` or `node-{/id}`.
 *
 * @param parts names that the topic pattern gives, and others that may be used
 * @param pointers whether the payload is JSON, so that pointers find something
 * @returns the template, or all that is wrong with it, each as a sentence
 */
export function parsedTemplate(
  text: string,
  parts: readonly string[],
  pointers: boolean,
): SensorTemplate | Said[] {
  if (text === '') return [sentence('template-empty', {})];
  const faults: Said[] = [];
  const pieces = [...text.matchAll(piece)].map(([whole, named, plain]): Piece => {
    if (plain !== undefined) {
      if (!idText.test(plain)) {
        faults.push(sentence('template-letters', { word: shown(plain) }));
      }
      return { kind: 'text', text: plain };
    }
    if (named === undefined) {
      faults.push(sentence('template-brace', { word: whole }));
      return { kind: 'text', text: '' };
    }
    if (named.startsWith('/') || named === '') {
      const pointer = parsedPointer(named);
      if (!pointers) {
        faults.push(sentence('template-pointer', { word: whole }));
      } else if (typeof pointer === 'string') {
        faults.push(pointerFault(pointer, named));
      }
      return { kind: 'pointer', text: named, pointer: typeof pointer === 'string' ? [] : pointer };
    }
    if (!parts.includes(named)) {
      faults.push(
        parts.length > 0
          ? sentence('part-unknown/of-some', {
              word: whole,
              options: parts.map((name) => `{${name}}`),
            })
          : sentence('part-unknown/of-none', { word: whole }),
      );
    }
    return { kind: 'part', name: named };
  });
  return faults.length > 0 ? faults : pieces;
}

/**
 * The id of the sensor that a message is of. What an id cannot hold but addresses often do
 * (colons, slashes, spaces) becomes a hyphen.
 *
 * @param json the parsed payload; anything where it is none
 */
export function sensorOf(template: SensorTemplate, parts: TopicParts, json: unknown): SensorId {
  let id = '';
  for (const one of template) {
    if (one.kind === 'text') id += one.text;
    else if (one.kind === 'part') id += idLetters(parts.get(one.name) ?? '');
    else {
      const found = atPointer(json, one.pointer);
      if ((typeof found !== 'string' && typeof found !== 'number') || found === '') {
        return refuse({
          code: 'sensor-id-not-allowed',
          ...because('sensor-name-missing', { pointer: one.text, sent: sent(found) }),
        });
      }
      id += idLetters(String(found));
    }
  }
  if (allowedSensorId.test(id) && /[A-Za-z0-9]/.test(id)) return { kind: 'sensor', sensor: id };
  return refuse({
    code: 'sensor-id-not-allowed',
    ...because('sensor-name', { word: shown(id) }),
  });
}

function idLetters(text: string): string {
  return text.trim().replaceAll(/[:/\s]/g, '-');
}
