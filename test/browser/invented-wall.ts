import type { Overview } from '../../daemon/contract/overview.ts';

type Place = Overview['places'][number];
type Batch = Place['batches'][number];

const HOUR_MS = 3_600_000;

const names = [
  ['North rack', 'Boards of the south gable'],
  ['South rack', 'Barge boards'],
  ['Loft', 'Window surrounds, ground floor'],
  ['By the stove', 'Corner boards'],
  ['Door side', 'Ship-lap, west wall'],
] as const;

/** What stands on the boards, over and over; `empty` is a rack without a batch. */
const signsInTurn = [
  'wait',
  'test',
  'wait',
  'ready',
  'wait',
  'hold',
  'bare',
  'wait',
  'empty',
  'done',
];

/**
 * A wall of invented racks with every sign on it.
 *
 * @param racks - how many
 * @param now - UTC epoch ms
 */
export function inventedWall(racks: number, now: number): Overview {
  return {
    site: 'shed',
    siteName: 'The long shed',
    now: iso(now),
    speed: 1,
    intake: {
      accepted: 1_000,
      duplicates: 0,
      refused: 0,
      broker: 'embedded',
      connected: true,
      refusing: false,
    },
    doubts: [],
    doubtsSaid: [],
    unplacedSensors: 0,
    mayWrite: true,
    writing: 'granted',
    places: Array.from({ length: racks }, (_, i) => placeOf(i, now)),
    notices: [],
  };
}

function placeOf(i: number, now: number): Place {
  const [rack, batch] = names[i % names.length] ?? names[0];
  const sign = signsInTurn[i % signsInTurn.length] ?? 'wait';
  const isPoor = i === 2;
  return {
    id: idOf(1, i),
    name: i < names.length ? rack : `${rack} ${Math.floor(i / names.length) + 1}`,
    kind: 'rack',
    within: null,
    volumeM3: null,
    facing: null,
    exposure: null,
    capacityM: null,
    capacityBoards: null,
    createdAt: iso(now - 900 * HOUR_MS),
    air: {
      at: iso(now - 60_000),
      tempC: 14.2,
      rhPercent: 71,
      dewPointC: 9,
      absoluteHumidityGM3: 8.7,
      stale: false,
      apartK: null,
      apartRhPercent: null,
      from: null,
    },
    airflow: isPoor ? 'poor' : i % 3 === 0 ? 'cannot-tell' : 'good',
    airReasons: isPoor
      ? [{ code: 'air-stagnant', text: 'Still air between the boards, at length.' }]
      : [],
    airChange: null,
    batches: sign === 'empty' ? [] : [batchOf(i, sign, batch, now)],
  };
}

function batchOf(i: number, sign: string, name: string, now: number): Batch {
  const batch: Batch = {
    id: idOf(2, i),
    name,
    boards: 24,
    coat: 0,
    coatName: 'Primer',
    coatCount: 3,
    finishedAt: iso(now - 40 * HOUR_MS),
    stage: 'tack-free',
    degreeHours: 560 + i,
    equivalentHours: 40,
    share: 0.7,
    nextGate: 'recoat',
    verdict: {
      verdict: 'wait',
      probability: 0.2,
      early: iso(now + 9 * HOUR_MS),
      likely: iso(now + 26 * HOUR_MS),
      late: iso(now + 44 * HOUR_MS),
      requiredDegreeHours: { early: 650, likely: 800, late: 990 },
      reasons: [{ code: 'cured-so-far', text: '560 of about 800 °C·h.' }],
    },
  };
  const { verdict } = batch;
  if (verdict === null) return batch;
  switch (sign) {
    case 'bare':
      return { ...batch, coat: null, stage: null, nextGate: null, verdict: null, share: null };
    case 'done':
      return { ...batch, coat: 2, stage: 'dry-through', nextGate: null, verdict: null };
    case 'hold':
      return {
        ...batch,
        verdict: {
          ...verdict,
          verdict: 'hold',
          reasons: [
            {
              code: 'too-damp-to-coat',
              text: 'The boards would be below the dew point within the hour: wait until they have warmed.',
            },
          ],
        },
      };
    case 'test':
    case 'ready':
      return { ...batch, verdict: { ...verdict, verdict: sign, early: null, likely: null } };
    default:
      return batch;
  }
}

/** A made-up id, the same each time. */
const idOf = (kind: number, i: number) =>
  `00000000-0000-4000-800${kind}-${String(i).padStart(12, '0')}`;

const iso = (at: number) => new Date(at).toISOString();
