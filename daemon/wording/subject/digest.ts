import type { Gate } from '../../contract/gate.ts';
import type { Inner, Nothing } from '../phrase.ts';

interface Rack {
  batchName: string;
  placeName: string;
  /** Name of the coat in its plan; null before the first. */
  coatName: Inner | null;
}

interface WeatherToBrush {
  placeName: string;
  /** The word, and what is against it. */
  sentences: Inner[];
}

/** The morning summed up, a line each. */
export interface DigestSentences {
  'digest-title': { at: number; toFeel: number; ready: number; open: number };
  'digest-head/racks': Nothing;
  'digest-head/feel': Nothing;
  'digest-head/wrong': Nothing;
  'digest-head/brush': Nothing;
  'digest-nothing': Nothing;
  'digest-rack/done': Rack;
  'digest-rack/ready': Rack & { gate: Gate };
  'digest-rack/test': Rack & { gate: Gate };
  'digest-rack/hold': Rack & { gate: Gate; because: Inner | null };
  'digest-rack/unknown': Rack & { gate: Gate };
  /** `today`: whether it is likely on the day of the message. */
  'digest-rack/likely': Rack & { gate: Gate; at: number; today: boolean };
  'digest-feel': { batchName: string; gate: Gate };
  'digest-brush': WeatherToBrush;
  'digest-brush/stop': WeatherToBrush & { stopAt: number; today: boolean; because: Inner };
}
