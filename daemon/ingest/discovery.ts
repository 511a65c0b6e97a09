import type { Decoded, Message } from '../../sensors/payload/decode-message.ts';
import { suggestedRule } from '../../sensors/payload/suggest-rule.ts';
import type {
  Discovery,
  FoundTopic,
  HeardMessage,
  RuleTrial,
  RuleTrialReply,
} from '../contract/found-topic.ts';
import { toMoment } from '../contract/moment.ts';
import { mqttChannels } from '../contract/mqtt-channel.ts';
import type { Said } from '../contract/sentence.ts';
import { ruleForm } from '../rules/topic-rule-fact.ts';
import { sentence } from '../wording/english.ts';
import { type HeardBytes, topicBook } from './topic-book.ts';
import type { TopicRules } from './topic-rules.ts';

export interface DiscoveryParts {
  site: string;
  rules: TopicRules;
  maxTopics: number;
  maxBytes: number;
  now: () => number;
  /** Listening to all topics of another broker; null with our own, which sees every message. */
  listener: {
    state(): { until: number | null; trouble: Said | null };
  } | null;
}

/** Of a try-out. Assumptions. */
const mostTried = 40;
const mostRefusals = 20;
/** How much of a payload is shown, in characters. */
const shownCharacters = 300;
/** What daemons of any site publish, by the level after the site’s name. */
const published: ReadonlySet<string> = new Set([
  'daemon',
  ...Object.values(mqttChannels)
    .filter(({ direction }) => direction === 'out')
    .map(({ topic }) => topic.split('/')[2] ?? ''),
]);

/** No sensor’s: a daemon’s own output, or the broker’s. */
function isOutput(topic: string): boolean {
  if (topic.startsWith('$')) return true;
  const [root, , what = ''] = topic.split('/', 3);
  return root === 'boardcure' && published.has(what);
}

/**
 * What is known of topics that are no readings yet: their last messages, what is suggested for
 * them, and what a rule would make of them.
 */
export function discovery({ site, rules, maxTopics, maxBytes, now, listener }: DiscoveryParts) {
  const ownInput = [`boardcure/${site}/sensor/`, `boardcure/${site}/forecast/`];
  const unknown = topicBook({ maxTopics, maxBytes });
  /** Messages that rules take, for trying changes of a rule. */
  const taken = topicBook({ maxTopics, maxBytes });

  function found(heard: { topic: string; count: number; firstAt: number; messages: HeardBytes[] }) {
    const last = heard.messages.at(-1);
    const suggestion = last ? suggestedRule(messageOf(heard.topic, last), maxBytes, last.at) : null;
    if (!last || suggestion === null) return null;
    return {
      topic: heard.topic,
      count: heard.count,
      firstAt: toMoment(heard.firstAt),
      last: shownMessage(heard.topic, last),
      values: [...suggestion.values],
      suggestion: suggestion.draft,
    } satisfies FoundTopic;
  }

  /** Messages that were heard and that an order of rules has the draft take. */
  function heardFor(draft: NonNullable<ReturnType<TopicRules['withDraft']>>) {
    const topics = [...unknown.topics(), ...taken.topics()];
    const fitting = topics.map(({ topic, messages }) => ({
      topic,
      messages,
      taker: draft.set.find(topic),
    }));
    return fitting.filter(({ taker }) => taker !== null && draft.isDraft(taker.rule));
  }

  return {
    /** A message on any topic. */
    note(topic: string, payload: Uint8Array, retained: boolean): void {
      if (ownInput.some((own) => topic.startsWith(own)) || isOutput(topic)) return;
      (rules.takes(topic) ? taken : unknown).note(topic, payload, now(), retained);
    },
    /** Rules have changed: what they take now is no longer unknown. */
    rulesChanged(): void {
      for (const { topic, messages } of unknown.topics()) {
        if (!rules.takes(topic)) continue;
        for (const { payload, at, retained } of messages) taken.note(topic, payload, at, retained);
        unknown.forget(topic);
      }
    },
    list(): Discovery {
      const topics = unknown.topics();
      const listed = topics.map(found).filter((topic) => topic !== null);
      const state = listener?.state();
      return {
        topics: listed,
        otherTopics: topics.length - listed.length,
        leftOut: unknown.leftOut(),
        listening: {
          always: listener === null,
          until: toMoment(state?.until ?? null),
          trouble: state?.trouble?.text ?? null,
          troubleSaid: state?.trouble ?? null,
        },
      };
    },
    /**
     * What a rule would make of the last messages, or of messages that are given.
     *
     * @param before rules that are asked before it
     * @param id of the rule that the draft is to replace; null for a new one
     */
    tryOut({ rule, messages }: RuleTrial, before: (id: string) => boolean, id: string | null) {
      const form = ruleForm(rule);
      const faults = rules.faults(form, id).map((fault) => ({ ...fault }));
      const draft = rules.withDraft(form, before);
      const reply: RuleTrialReply = { faults, topics: 0, takenByOthers: 0, tried: [] };
      if (draft === null) return reply;
      const given = messages?.map(({ topic, payload }) => {
        const bytes = new TextEncoder().encode(payload);
        const message = { at: now(), payload: bytes, bytes: bytes.byteLength, retained: false };
        return { topic, messages: [message] };
      });
      const heard = given ?? heardFor(draft);
      reply.topics = given ? 0 : heard.length;
      const alone = rules.withDraft(form, () => false);
      reply.takenByOthers = given
        ? 0
        : [...unknown.topics(), ...taken.topics()].filter(
            ({ topic }) =>
              alone?.set.find(topic) != null && !heard.some((one) => one.topic === topic),
          ).length;
      // The newest of each topic first, so that many topics show before many of one.
      const newest = heard
        .flatMap(({ topic, messages: some }) =>
          [...some].reverse().map((message, age) => ({ topic, message, age })),
        )
        .sort((a, b) => a.age - b.age || b.message.at - a.message.at);
      for (const { topic, message } of newest.slice(0, mostTried)) {
        if (message.bytes > message.payload.length) {
          reply.tried.push({ message: shownMessage(topic, message), ...notWhole(message) });
          continue;
        }
        const decoded = draft.set.decode(messageOf(topic, message), {}, { now: message.at });
        reply.tried.push({ message: shownMessage(topic, message), ...outcome(decoded) });
      }
      return reply;
    },
    /** Sensors that a rule would make readings of, with when they were last heard. */
    sensorsOf(rule: RuleTrial['rule']): Map<string, number> {
      const draft = rules.withDraft(ruleForm(rule), () => true);
      const sensors = new Map<string, number>();
      if (draft === null) return sensors;
      for (const { topic, messages } of heardFor(draft)) {
        for (const message of messages) {
          const decoded = draft.set.decode(messageOf(topic, message), {}, { now: message.at });
          if (decoded.kind !== 'readings') continue;
          for (const { sensor } of decoded.readings) sensors.set(sensor, message.at);
        }
      }
      return sensors;
    },
  };
}
export type TopicDiscovery = ReturnType<typeof discovery>;

const shownRefusal = (code: string, said: Said) => ({
  ...{ code, detail: said.text, detailSaid: said },
});

function notWhole({ bytes, payload }: HeardBytes) {
  const said = sentence('message-cut', { keptBytes: payload.length, bytes });
  return { readings: [], refused: [shownRefusal('payload-too-large', said)] };
}

function outcome(decoded: Decoded): Pick<RuleTrialReply['tried'][number], 'readings' | 'refused'> {
  if (decoded.kind === 'not-ours') {
    const said = sentence('topic-not-taken', {});
    return { readings: [], refused: [shownRefusal('topic-not-understood', said)] };
  }
  const refused = decoded.kind === 'refused' ? [decoded.refusal] : decoded.refused;
  const readings = decoded.kind === 'refused' ? [] : decoded.readings;
  return {
    readings: readings.map(({ sensor, quantity, value, ownAt }) => ({
      sensor,
      quantity,
      value,
      at: toMoment(ownAt),
    })),
    refused: refused.slice(0, mostRefusals).map(({ code, said }) => shownRefusal(code, said)),
  };
}

/** A message for the decoder; one that was cut is not whole, and will say so. */
function messageOf(topic: string, { payload, bytes }: HeardBytes): Message {
  return {
    topic,
    text: utf8(payload),
    byteLength: Math.min(bytes, payload.length),
    bytes: payload,
  };
}

function utf8(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

function shownMessage(topic: string, { at, payload, bytes, retained }: HeardBytes): HeardMessage {
  const text =
    utf8(payload) ?? [...payload].map((byte) => byte.toString(16).padStart(2, '0')).join(' ');
  const printable = text.slice(0, shownCharacters).replaceAll(/[\p{C}\p{Zl}\p{Zp}]/gu, '·');
  return { topic, at: toMoment(at), text: printable, bytes, retained };
}
