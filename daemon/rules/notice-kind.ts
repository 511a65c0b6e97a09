import type { NoticeKind } from '../contract/notice.ts';

interface KindOfNotice {
  /** True for what can hurt: it does not wait for the end of the quiet hours. */
  ignoresQuiet: boolean;
  /** True where only a person clears it: nothing that is measured does. */
  byHand: boolean;
  /** For so long it must be over before it is cleared, so that it does not flutter, min. Assumption. */
  calmMinutes: number;
}

/** What each kind of notice is about, and whether it may wake somebody. */
export const noticeKinds: Record<NoticeKind, KindOfNotice> = {
  rags: { ignoresQuiet: true, byHand: true, calmMinutes: 0 },
  vapour: { ignoresQuiet: true, byHand: false, calmMinutes: 30 },
  overheating: { ignoresQuiet: true, byHand: false, calmMinutes: 30 },
  'place-silent': { ignoresQuiet: false, byHand: false, calmMinutes: 30 },
  'batch-without-air': {
    ignoresQuiet: false,
    byHand: false,
    calmMinutes: 0,
  },
  'sensor-fault': {
    ignoresQuiet: false,
    byHand: false,
    calmMinutes: 10,
  },
  'gate-ready': { ignoresQuiet: false, byHand: false, calmMinutes: 0 },
  'look-again': {
    ignoresQuiet: false,
    byHand: false,
    calmMinutes: 0,
  },
  'mounting-open': {
    ignoresQuiet: false,
    byHand: false,
    calmMinutes: 0,
  },
  'sensor-unplaced': {
    ignoresQuiet: false,
    byHand: false,
    calmMinutes: 0,
  },
};
