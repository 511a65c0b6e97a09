import fc from 'fast-check';
import { expect } from 'vitest';
import { quantityFacts } from '../../daemon/contract/quantity.ts';
import { Sentence } from '../../daemon/contract/sentence.ts';
import { ruleForm } from '../../daemon/rules/topic-rule-fact.ts';
import { parsedPointer } from '../../sensors/payload/json-pointer.ts';
import { type Refusal, refusalCodes } from '../../sensors/payload/refusal.ts';
import { ruleSet } from '../../sensors/payload/rule-set.ts';
import { senmlCborPack } from '../../sensors/payload/senml-cbor.ts';
import { resolvedPack } from '../../sensors/payload/senml-pack.ts';
import { suggestedRule } from '../../sensors/payload/suggest-rule.ts';
import {
  covers,
  matchedTopic,
  parsedPattern,
  type TopicPattern,
} from '../../sensors/payload/topic-pattern.ts';
import { compiledRule } from '../../sensors/payload/topic-rule.ts';
import { now } from './payload-arbitraries.ts';
import type { PayloadProperty } from './payload-properties.ts';
import {
  anyDraft,
  anyPattern,
  anyPayload,
  anyTopic,
  cborBytes,
  likelyDraft,
  packInBoth,
} from './rule-arbitraries.ts';

// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const controls = /[\u0000-\u001f]/;

function checkRefusal({ code, detail, said }: Refusal): void {
  expect(refusalCodes).toContain(code);
  expect(Sentence.parse(said).text).toBe(detail);
  expect(detail.length > 20 && detail.length < 1500).toBe(true);
  expect(detail).not.toMatch(controls);
}

const pattern = (text: string): TopicPattern | null => {
  const read = parsedPattern(text, 'shed');
  return Array.isArray(read) ? null : (read as TopicPattern);
};

/** MQTT’s own rules once more, as one regular expression. */
function asExpression({ levels }: TopicPattern): RegExp {
  const plain = (text: string) => text.replaceAll(/[\\^$.*+?()[\]{}|]/g, '\\$&');
  const parts = levels.map((level) => {
    if (level.kind === 'word') return plain(level.text);
    if (level.kind === 'any') return '[^/]*';
    return level.kind === 'part' ? `${plain(level.before)}[^/]+${plain(level.after)}` : null;
  });
  const open = parts.at(-1) === null;
  const fixed = (open ? parts.slice(0, -1) : parts).join('/');
  if (!open) return new RegExp(`^${fixed}$`, 's');
  return new RegExp(parts.length === 1 ? '^.*$' : `^${fixed}(?:/.*)?$`, 's');
}

/** What must hold for every rule, and every message that it meets. */
export const ruleProperties: readonly PayloadProperty[] = [
  {
    claim: 'no draft of a rule stops the check, and each fault says where and what',
    check: (runs) =>
      fc.assert(
        fc.property(anyDraft, (draft) => {
          const read = compiledRule(ruleForm(draft), 'shed');
          if (read.kind === 'rule') return;
          expect(read.faults.length).toBeGreaterThan(0);
          for (const { pointer, detail, detailSaid } of read.faults) {
            expect(Sentence.parse(detailSaid).text).toBe(detail);
            expect(Array.isArray(parsedPointer(pointer))).toBe(true);
            expect(detail.length).toBeGreaterThan(15);
          }
        }),
        { numRuns: runs },
      ),
  },
  {
    claim: 'no message stops a rule, what it lets through is measurable, and nothing else changes',
    check: (runs) => {
      const before = Reflect.ownKeys(Object.prototype).length;
      fc.assert(
        fc.property(
          fc.oneof({ weight: 4, arbitrary: likelyDraft }, anyDraft),
          fc.oneof(anyTopic, fc.constantFrom('farm/attic/data', 'farm/n1')),
          anyPayload,
          (draft, topic, payload) => {
            const read = compiledRule(ruleForm(draft), 'shed');
            if (read.kind === 'faults') return;
            const decoded = ruleSet([read.rule]).decode({ topic, ...payload }, {}, { now });
            expect(Reflect.ownKeys(Object.prototype)).toHaveLength(before);
            if (decoded.kind === 'not-ours') return;
            const readings = decoded.kind === 'readings' ? decoded.readings : [];
            const refusals = decoded.kind === 'readings' ? decoded.refused : [decoded.refusal];
            for (const { sensor, quantity, value, ownAt } of readings) {
              const { low, high } = quantityFacts[quantity];
              expect(sensor).toMatch(/^[A-Za-z0-9._-]{1,64}$/);
              expect(value >= low && value <= high && !Object.is(value, -0)).toBe(true);
              expect(ownAt === null || Number.isSafeInteger(ownAt)).toBe(true);
            }
            for (const refusal of refusals) checkRefusal(refusal);
            expect(readings.length + refusals.length).toBeGreaterThan(0);
          },
        ),
        { numRuns: runs },
      );
    },
  },
  {
    claim: 'a pattern takes the topics that MQTT says it takes',
    check: (runs) =>
      fc.assert(
        fc.property(anyPattern, anyTopic, (text, topic) => {
          const read = pattern(text);
          if (read === null || topic.startsWith('$')) return;
          const isMatch = matchedTopic(read, topic.split('/')) !== null;
          expect(isMatch).toBe(asExpression(read).test(topic));
        }),
        { numRuns: runs },
      ),
  },
  {
    claim: 'what a pattern covers it also takes',
    check: (runs) =>
      fc.assert(
        fc.property(anyPattern, anyPattern, anyTopic, (a, b, topic) => {
          const [outer, inner] = [pattern(a), pattern(b)];
          if (outer === null || inner === null || !covers(outer, inner)) return;
          const levels = topic.split('/');
          // A named part is never empty, so that a level that is empty is left aside.
          if (levels.includes('') || matchedTopic(inner, levels) === null) return;
          expect(matchedTopic(outer, levels)).not.toBeNull();
        }),
        { numRuns: runs },
      ),
  },
  {
    claim: 'no bytes stop the reading of CBOR',
    check: (runs) => {
      const before = Reflect.ownKeys(Object.prototype).length;
      fc.assert(
        fc.property(cborBytes, (bytes) => {
          const read = senmlCborPack(bytes);
          if (read.kind === 'refused') checkRefusal(read.refusal);
          else resolvedPack(read.pack);
          expect(Reflect.ownKeys(Object.prototype)).toHaveLength(before);
        }),
        { numRuns: runs },
      );
    },
  },
  {
    claim: 'a pack means the same in CBOR as in JSON',
    check: (runs) =>
      fc.assert(
        fc.property(packInBoth, ({ pack, bytes }) => {
          const read = senmlCborPack(bytes);
          const json: unknown = JSON.parse(JSON.stringify(pack));
          if (read.kind === 'refused') throw new Error(read.refusal.detail);
          // JSON has no −0.
          expect(JSON.stringify(resolvedPack(read.pack))).toBe(
            JSON.stringify(resolvedPack(json as unknown[])),
          );
        }),
        { numRuns: runs },
      ),
  },
  {
    claim: 'what is suggested for a topic can be saved, unless the site itself uses the topic',
    check: (runs) =>
      fc.assert(
        fc.property(anyTopic, anyPayload, (topic, payload) => {
          const suggestion = suggestedRule({ topic, ...payload }, 2048, now);
          if (suggestion === null || suggestion.draft.values.length === 0) return;
          const read = compiledRule(ruleForm(suggestion.draft), 'shed');
          const faults = read.kind === 'faults' ? read.faults : [];
          expect(faults.filter(({ pointer }) => pointer !== '/pattern')).toEqual([]);
        }),
        { numRuns: runs },
      ),
  },
];
