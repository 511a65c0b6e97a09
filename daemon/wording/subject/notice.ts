import type { Gate } from '../../contract/gate.ts';
import type { NoticeKind } from '../../contract/notice.ts';
import type { Inner, Nothing } from '../phrase.ts';

type NoticeTitles = { [Kind in NoticeKind as `notice-title/${Kind}`]: Nothing };

interface BatchAtPlace {
  batchName: string;
  placeName: string;
}

/** What wants attention, and the messages that tell of it. The code of a notice is its kind. */
export interface NoticeSentences extends NoticeTitles {
  'sensor-unplaced': { sensor: string };
  'sensor-fault': { faults: Inner[] };
  'place-silent': { placeName: string };
  'batch-without-air': BatchAtPlace;
  'look-again': BatchAtPlace & { look: Inner };
  'mounting-open': BatchAtPlace;
  'gate-ready': BatchAtPlace & { gate: Gate };
  vapour: { placeName: string; nowPpm: number; limitPpm: number };
  overheating: { placeName: string; tempC: number };
  rags: Nothing;
  /** The head of a message; `again`: it was told before. */
  'message-title': { title: Inner; again: boolean };
  'message-title/held-back': { notices: number };
  'message-title/nothing': Nothing;
  /** A notice in a message; `text` is its sentence. */
  'message-entry': { text: string; at: number };
  'message-entry/over': { text: string; at: number; overAt: number };
}
