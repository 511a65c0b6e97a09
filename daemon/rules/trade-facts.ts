import type { CoatingStep } from '../contract/coating.ts';
import type { MountingLine } from '../contract/mounting.ts';
import type { Knots, StateBefore, StoredHow, Support } from '../contract/timber.ts';
import type { Driers, TinKind } from '../contract/tin.ts';

/* What was recorded of timber, tins and work, as plain data; see facts.ts. */

export interface TimberFact {
  stateBefore: StateBefore | null;
  deliveredAt: number | null;
  storedHow: StoredHow | null;
  support: Support | null;
  knots: Knots | null;
}

export const nothingSaidOfTimber: TimberFact = {
  stateBefore: null,
  deliveredAt: null,
  storedHow: null,
  support: null,
  knots: null,
};

/** Boards that became a batch of their own; what happened up to `at` is shared. */
export interface SplitFact {
  id: string;
  batchId: string;
  childId: string;
  boards: number;
  at: number;
}

/** A batch that was put to another; what happens to that after `at` is shared. */
export interface MergeFact {
  id: string;
  /** The batch that stays. */
  batchId: string;
  /** The batch that ends in it. */
  mergedId: string;
  at: number;
}

export interface TinFact {
  id: string;
  name: string;
  kind: TinKind;
  colour: string | null;
  volumeL: number | null;
  driers: Driers;
  openedAt: number | null;
  emptiedAt: number | null;
  createdAt: number;
}

/** A coat on its way. */
export interface CoatingFact {
  id: string;
  batchId: string;
  coat: number;
  begunAt: number;
  tinId: string | null;
  coatId: string | null;
  givenUpAt: number | null;
}

export interface CoatingStepFact {
  coatingId: string;
  step: CoatingStep;
  at: number;
}

export interface MountingTickFact {
  moveId: string;
  line: MountingLine;
  at: number;
}
