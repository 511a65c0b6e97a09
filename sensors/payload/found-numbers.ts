import { type Message, readPayload } from './decode-message.ts';
import { isJsonObject, member, parsedJson } from './json.ts';
import { pointerText } from './json-pointer.ts';
import { shown } from './refusal.ts';
import { resolvedPack } from './senml-pack.ts';
import { nameParts } from './senml-readings.ts';

/** A number that stands in a message. */
export type FoundNumber = {
  /** In JSON; empty for the whole payload. */
  readonly pointer: string;
  /** Last segment of a SenML record's name. */
  readonly name: string;
  readonly number: number;
  readonly unit: string | null;
  /** As it was sent. */
  readonly shown: string;
  /** Names around it, the nearest first. */
  readonly names: readonly string[];
};

export type FoundNumbers = {
  readonly payload: 'text' | 'json' | 'senml';
  readonly numbers: readonly FoundNumber[];
  /** The parsed payload, where it is JSON. */
  readonly json: unknown;
};

/** Enough to choose from. Assumptions. */
const mostNumbers = 24;
const mostVisited = 400;
const deepest = 6;
const numberAndUnit = /^([+-]?\d{1,15}(?:[.,]\d{1,9})?)(?:\s{0,2}([^\d\s]\D{0,11}))?$/u;

/** Looks for numbers in a payload of unknown shape; null when there is none. Never throws. */
export function foundNumbers(message: Message, maxBytes: number): FoundNumbers | null {
  const read = readPayload(message, maxBytes);
  if (read.kind === 'refused') return null;
  if (read.kind === 'pack') return inPack(read.pack);
  const { text } = read;
  if (!text.startsWith('{') && !text.startsWith('[')) {
    const one = numberIn(text);
    const place = { pointer: '', name: '', names: [], shown: shown(text).slice(1, -1) };
    return one === null ? null : { payload: 'text', numbers: [{ ...place, ...one }], json: null };
  }
  const parsed = parsedJson(text);
  if (parsed.kind === 'refused') return null;
  const { json } = parsed;
  if (Array.isArray(json) && json.length > 0 && json.every(isRecord)) {
    const pack = inPack(json);
    if (pack !== null) return pack;
  }
  const numbers = inJson(json);
  return numbers.length === 0 ? null : { payload: 'json', numbers, json };
}

const isRecord = (item: unknown): boolean =>
  isJsonObject(item) &&
  (typeof member(item, 'n') === 'string' ||
    typeof member(item, 'bn') === 'string' ||
    typeof member(item, 'v') === 'number');

function inPack(pack: readonly unknown[]): FoundNumbers | null {
  const resolved = resolvedPack(pack);
  if (resolved.kind === 'refused') return null;
  const numbers = new Map<string, FoundNumber>();
  for (const record of resolved.records) {
    if (record.kind === 'refused' || record.value === null) continue;
    const { segment } = nameParts(record.name);
    if (segment === '' || numbers.size >= mostNumbers) continue;
    numbers.set(segment, {
      pointer: '',
      name: segment,
      number: record.value,
      unit: null,
      shown: `${record.value}${record.unit === null ? '' : ` ${shown(record.unit).slice(1, -1)}`}`,
      names: [segment],
    });
  }
  return numbers.size === 0
    ? null
    : { payload: 'senml', numbers: [...numbers.values()], json: null };
}

function inJson(json: unknown): FoundNumber[] {
  const numbers: FoundNumber[] = [];
  // Broad before deep: what matters stands near the top.
  const waiting: { value: unknown; path: readonly string[] }[] = [{ value: json, path: [] }];
  for (let visited = 0; visited < waiting.length && visited < mostVisited; visited++) {
    const { value, path } = waiting[visited] as (typeof waiting)[number];
    if (numbers.length >= mostNumbers) break;
    if (typeof value === 'object' && value !== null) {
      if (path.length >= deepest) continue;
      for (const [key, inner] of Object.entries(value).slice(0, mostVisited)) {
        waiting.push({ value: inner, path: [...path, key] });
      }
      continue;
    }
    const one =
      typeof value === 'number'
        ? { number: value, unit: null }
        : typeof value === 'string'
          ? numberIn(value)
          : null;
    if (one === null || !Number.isFinite(one.number)) continue;
    numbers.push({
      ...one,
      pointer: pointerText(path),
      name: '',
      shown: typeof value === 'string' ? shown(value).slice(1, -1) : String(value),
      names: [...path].reverse(),
    });
  }
  return numbers;
}

function numberIn(text: string): { number: number; unit: string | null } | null {
  const word = text.trim();
  const parts = word.length > 40 ? null : numberAndUnit.exec(word);
  if (parts?.[1] === undefined) return null;
  return { number: Number(parts[1].replace(',', '.')), unit: parts[2]?.trim() ?? null };
}
