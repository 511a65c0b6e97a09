import { atPointer, type JsonPointer, parsedPointer } from './json-pointer.ts';
import { type Refused, refuse, shown } from './refusal.ts';
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
): SensorTemplate | string[] {
  if (text === '')
    return ['The sensor has no name; give one, or a part of the topic such as {sensor}.'];
  const faults: string[] = [];
  const pieces = [...text.matchAll(piece)].map(([whole, named, plain]): Piece => {
    if (plain !== undefined) {
      if (!idText.test(plain)) {
        faults.push(`In ${shown(plain)} only A–Z a–z 0–9 . _ - can stand in a sensor’s name.`);
      }
      return { kind: 'text', text: plain };
    }
    if (named === undefined) {
      faults.push(`A ${whole} stands alone; write a part as {sensor} or {/id}.`);
      return { kind: 'text', text: '' };
    }
    if (named.startsWith('/') || named === '') {
      const pointer = parsedPointer(named);
      if (!pointers) {
        faults.push(`${whole} points into JSON, but the payload is none; use a part of the topic.`);
      } else if (typeof pointer === 'string') {
        faults.push(`The pointer ${named} ${pointer}.`);
      }
      return { kind: 'pointer', text: named, pointer: typeof pointer === 'string' ? [] : pointer };
    }
    if (!parts.includes(named)) {
      faults.push(
        `There is no part ${whole} in the pattern${parts.length > 0 ? `; it has ${parts.map((name) => `{${name}}`).join(', ')}` : '; name a level of it so'}.`,
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
          detail: `At ${one.text}, where the sensor’s name should stand, is ${found === undefined ? 'nothing' : shown(found)}; point at a text or number in the payload.`,
        });
      }
      id += idLetters(String(found));
    }
  }
  if (allowedSensorId.test(id) && /[A-Za-z0-9]/.test(id)) return { kind: 'sensor', sensor: id };
  return refuse({
    code: 'sensor-id-not-allowed',
    detail: `The sensor’s name ${shown(id)} is not allowed; it may have 1 to 64 of the characters A–Z a–z 0–9 . _ - and needs a letter or digit.`,
  });
}

function idLetters(text: string): string {
  return text.trim().replaceAll(/[:/\s]/g, '-');
}
