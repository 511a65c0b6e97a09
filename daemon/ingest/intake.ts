import {
  type Arrival,
  flagMask,
  readingFlagBits,
  readingTime,
} from '../../sensors/correct/reading-time.ts';
import { type Decoded, decodePayload, type Message } from '../../sensors/payload/decode-message.ts';
import type { Measurement } from '../../sensors/payload/measurement.ts';
import type { Quantity } from '../contract/quantity.ts';
import type {
  IncomingReading,
  OpenMessage,
  PendingReading,
  RefusedMessage,
} from '../rules/facts.ts';
import type { Acknowledge, groupCommit } from './group-commit.ts';
import { knownTopics } from './known-topics.ts';
import { keptCharacters, refusedMessage, textOf } from './refused-message.ts';

/** A message as a broker hands it over. */
export interface Arrived {
  topic: string;
  payload: Uint8Array;
  /** The broker kept it; it was not sent just now. */
  retained: boolean;
  /** It waited at the broker while nobody was there to take it. */
  backlog: boolean;
  /** Who waits for the acknowledgement: the client’s id at our own broker. */
  from?: string | undefined;
  /**
   * To be called where taking the message again would store it twice; what it returns is to be
   * written with it. Only of messages at QoS 2.
   */
  keep?: () => OpenMessage;
}

/** What became of the messages since the start. */
export interface IntakeCounts {
  accepted: number;
  duplicates: number;
  refused: number;
  /** Retained messages without a time of their own: they are not now. */
  dropped: number;
  /** Readings whose own time could not be believed, or is not known. */
  flagged: number;
}

export interface IntakeParts {
  site: string;
  maxPayloadBytes: number;
  now: () => number;
  clockTrusted: () => boolean;
  /** What dates a reading while the clock is not trusted; not needed where it always is. */
  boot?: {
    /** Names this running of the computer. */
    name: string;
    /** How long it has been running, ms. */
    upMs: () => number;
  };
  /** Told how far a sensor’s own time lay from its arrival, of a message that was sent just now. */
  heardTime?: (sensor: string, ownAt: number, at: number) => void;
  /** Told why something was refused. */
  refusedFor?: (code: string) => void;
  /** Told of a figure sent just now that can be no reading, such as the −127 of a broken wire. */
  beyondLimits?: (sensor: string, quantity: Quantity, value: number, at: number) => void;
  queue: Pick<ReturnType<typeof groupCommit>, 'add'>;
  /** What becomes of topics beside the default layout; without it they are nothing to us. */
  otherTopics?: {
    heard(topic: string, payload: Uint8Array, retained: boolean): void;
    decode(message: Message, at: number): Decoded;
  };
}

/** So many series are remembered; then it starts anew. */
const mostSeries = 50_000;

/** How far arrivals of one series may be pushed apart; a clock set back further starts anew. */
const mostCrowdedMs = 1000;

/** Takes messages in: decodes, judges their time, and hands them to the group that commits them. */
export function createIntake(parts: IntakeParts) {
  const { site, maxPayloadBytes, now, clockTrusted, heardTime, queue, otherTopics } = parts;
  const boot = parts.boot ?? { name: '', upMs: () => performance.now() };
  const counts: IntakeCounts = { accepted: 0, duplicates: 0, refused: 0, dropped: 0, flagged: 0 };
  const lastArrival = new Map<string, number>();
  const lastWaiting = new Map<string, number>();
  const topicOf = knownTopics(site);

  /**
   * A moment of its own for a reading that is dated by its arrival: a second one of the same series
   * in the same millisecond is another reading, not the same again.
   */
  function ownMoment(lasts: Map<string, number>, series: string, arrivedAt: number): number {
    const last = lasts.get(series);
    const crowded = last !== undefined && arrivedAt <= last && last - arrivedAt < mostCrowdedMs;
    const at = crowded ? last + 1 : arrivedAt;
    // Only the last second matters; a flood of names must not fill the memory.
    if (lasts.size >= mostSeries) lasts.clear();
    lasts.set(series, at);
    return at;
  }

  /** A message beside the default layout: noted for whoever sets up sensors, and read by a rule. */
  function decodedElsewhere(sent: Message, at: number, retained: boolean): Decoded {
    if (!otherTopics) return { kind: 'not-ours' };
    otherTopics.heard(sent.topic, sent.bytes ?? new Uint8Array(), retained);
    return otherTopics.decode(sent, at);
  }

  /** Gives a measurement its time, or leaves it waiting for the clock. */
  function date(measurement: Measurement, arrival: Arrival, taken: Taken): void {
    const { sensor, quantity, value, ownAt } = measurement;
    const { at, clockTrusted, retained, backlog } = arrival;
    const isRelative = measurement.ownAtIsRelative === true;
    const time = readingTime(ownAt, isRelative ? { ...arrival, ownAtIsRelative: true } : arrival);
    if (time.kind === 'drop') {
      counts.dropped++;
      return;
    }
    if (time.kind === 'wait') {
      const ageMs = isRelative && ownAt !== null ? Math.max(0, at - ownAt) : 0;
      const measuredMs = Math.round(boot.upMs()) - ageMs;
      const waiting: PendingReading = {
        boot: boot.name,
        monotonicMs:
          ageMs > 0 ? measuredMs : ownMoment(lastWaiting, `${sensor} ${quantity}`, measuredMs),
        ownAt: isRelative ? null : ownAt,
        sensor,
        quantity,
        raw: value,
        flags: retained || backlog ? readingFlagBits['time-unknown'] : 0,
      };
      taken.datedByArrival = true;
      taken.pending ??= [];
      taken.pending.push(waiting);
      return;
    }
    if (clockTrusted && ownAt !== null && !isRelative && !retained && !backlog) {
      heardTime?.(sensor, ownAt, at);
    }
    if (time.flags.length > 0) counts.flagged++;
    if (time.at === at || isRelative) taken.datedByArrival = true;
    const dated: IncomingReading = {
      sensor,
      quantity,
      at: time.at === at ? ownMoment(lastArrival, `${sensor} ${quantity}`, at) : time.at,
      raw: value,
      flags: flagMask(time.flags),
    };
    // Most bring one, and a list that is pushed to makes room for seventeen.
    if (taken.readings.length === 0) taken.readings = [dated];
    else taken.readings.push(dated);
  }

  return {
    counts,
    /** Told by the store what a commit made of the readings. */
    count(fresh: number, duplicates: number, refused = 0): void {
      counts.accepted += fresh;
      counts.duplicates += duplicates;
      counts.refused += refused;
    },
    /**
     * Takes one message in.
     *
     * @param acknowledge - called once everything the message brought is on disk
     */
    take(message: Arrived, acknowledge: Acknowledge): void {
      const at = now();
      const { payload } = message;
      const topic = topicOf(message.topic);
      if (topic.kind === 'not-ours' && !otherTopics) {
        acknowledge(null);
        return;
      }
      const tooLarge = payload.byteLength > maxPayloadBytes;
      const text = textOf(tooLarge ? payload.subarray(0, keptCharacters) : payload, tooLarge);
      const sent: Message = {
        topic: message.topic,
        text: tooLarge ? '' : text,
        byteLength: payload.byteLength,
        bytes: payload,
      };
      const decoded =
        topic.kind === 'address'
          ? decodePayload(sent, topic.address, { maxBytes: maxPayloadBytes }, { now: at })
          : topic.kind === 'refused'
            ? topic
            : decodedElsewhere(sent, at, message.retained);
      if (decoded.kind === 'not-ours') {
        acknowledge(null);
        return;
      }
      const taken: Taken = { readings: [], pending: null, datedByArrival: false };
      const refusals = decoded.kind === 'refused' ? [decoded.refusal] : decoded.refused;
      const refused: readonly RefusedMessage[] =
        refusals.length === 0
          ? none
          : refusals.map((refusal) => refusedMessage(refusal, message, text, at));
      if (decoded.kind !== 'refused') {
        const { retained, backlog } = message;
        const arrival = { at, clockTrusted: clockTrusted(), retained, backlog };
        for (const measurement of decoded.readings) date(measurement, arrival, taken);
      }
      if (refusals.length > 0 && !message.retained && !message.backlog && clockTrusted()) {
        for (const { sensor, quantity, value } of refusals) {
          if (sensor === undefined || quantity === undefined || value === undefined) continue;
          parts.beyondLimits?.(sensor, quantity, value, at);
        }
      }
      counts.refused += refused.length;
      for (const { code } of refused) parts.refusedFor?.(code);
      const { readings } = taken;
      const pending = taken.pending ?? none;
      if (readings.length + refused.length + pending.length === 0) acknowledge(null);
      else {
        const opened = taken.datedByArrival ? message.keep?.() : undefined;
        queue.add(readings, refused, acknowledge, { pending, from: message.from, opened });
      }
    },
  };
}

/** What a message brought, dated as far as it can be. */
interface Taken {
  readings: IncomingReading[];
  /** Mostly none. */
  pending: PendingReading[] | null;
  /** A reading has no time of its own that would tell it from the next. */
  datedByArrival: boolean;
}

/** Most messages bring none of a kind: one list stands for all of these. */
const none: readonly never[] = [];

export type Intake = ReturnType<typeof createIntake>;
