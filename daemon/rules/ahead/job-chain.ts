/** What a step of a batch is: a coat to brush on, or the boards to put up. */
export type StepKind = 'coat' | 'mount';

/** What a coat needs before the next step, hours at 20 °C: log-normal by its 10 and 90 % points. */
export interface CureNeed {
  p10: number;
  p90: number;
  /** What it has gathered of that already. */
  gathered: number;
}

/** One step of the work on a batch. */
export interface Step {
  kind: StepKind;
  /** Index of the coat in the plan; of the coat that has to cure, for mounting. */
  coat: number;
  /** How long the hands are busy, ms. */
  workMs: number;
  /** What has to cure before the step after this one, or before the job is done. */
  cure: CureNeed | null;
  /** Place whose air the coat cures in after this step. */
  placeId: string;
  /** True while the boards lie on a rack after this step. */
  onRack: boolean;
}

/** A batch, or the part of it that the racks hold at once, with all that is still to be done. */
export interface JobChain {
  batchId: string;
  /** Which part of a batch that has to be done in parts, from 0. */
  lot: number;
  lots: number;
  boards: number;
  /** Running metres that it takes on the racks. */
  rackM: number;
  steps: readonly Step[];
  /** True where it lies on a rack already. */
  isOnRack: boolean;
  /** What is still to cure before the first step, hours at 20 °C and where; null where nothing is. */
  curing: (CureNeed & { placeId: string; fromAt: number }) | null;
  /** Not begun before, UTC epoch ms. */
  fromAt: number;
}

/** z of the 90 % point of a normal distribution. */
const z90 = 1.2815515655446004;

/** What a coat still needs, hours at 20 °C, if it is slow by so many spreads of the logarithm. */
export function needAt({ p10, p90, gathered }: CureNeed, deviation: number): number {
  if (p10 <= 0 || p90 <= 0) return 0;
  const middle = (Math.log(p10) + Math.log(p90)) / 2;
  const spread = (Math.log(p90) - Math.log(p10)) / (2 * z90);
  return Math.max(0, Math.exp(middle + deviation * spread) - gathered);
}

/**
 * Divides a batch so that each part fits the racks.
 *
 * @param capacityM - what all racks hold together, running metres; null where nobody said
 */
export function inLots(
  chain: Omit<JobChain, 'lot' | 'lots'>,
  capacityM: number | null,
): JobChain[] {
  const onePiece =
    capacityM === null || chain.rackM <= capacityM || chain.isOnRack || chain.boards <= 1;
  if (onePiece || capacityM <= 0) return [{ ...chain, lot: 0, lots: 1 }];
  const metresPerBoard = chain.rackM / chain.boards;
  const perLot = Math.max(1, Math.floor(capacityM / metresPerBoard + 1e-9));
  const lots = Math.ceil(chain.boards / perLot);
  return Array.from({ length: lots }, (_, lot) => {
    const boards = lot < lots - 1 ? perLot : chain.boards - perLot * (lots - 1);
    const share = boards / chain.boards;
    return {
      ...chain,
      lot,
      lots,
      boards,
      rackM: boards * metresPerBoard,
      steps: chain.steps.map((step) => ({ ...step, workMs: step.workMs * share })),
    };
  });
}
