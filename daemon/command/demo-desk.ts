import type { CoatToLay, Desk, WaitingBatch } from '../../sensors/shed/operator.ts';
import type { Batch, Boards } from '../contract/batch.ts';
import { toMoment } from '../contract/moment.ts';
import type { Surface } from '../contract/plan.ts';
import { boardArea, mixture } from '../science/paint.ts';
import type { Api } from './demo-api.ts';

/** A batch with what the daemon wants to know of it. */
export interface BatchOnPaper extends WaitingBatch {
  readonly species: Batch['species'];
  readonly surface: Surface;
  readonly boards: Boards;
}

const COATING_MS = 1.5 * 3_600_000;
/** What stays in pot and brush. Assumption. */
const LOSS_PERCENT = 5;

/**
 * The daemon as somebody in the shed uses it: over HTTP, as the page would.
 *
 * @param api - calls the daemon
 * @param placeIds - the racks as the daemon knows them
 * @param onPaper - what the daemon wants to know of a batch
 * @param lossPercent - of the paint, that stays in pot and brush
 */
export function demoDesk(
  api: Api,
  placeIds: Readonly<Record<string, string>>,
  onPaper: (batch: WaitingBatch) => BatchOnPaper,
  lossPercent = LOSS_PERCENT,
): Desk {
  const begun = new Map<string, { plan: Batch['plan']; boards: Boards }>();

  const placeOf = (rack: string): string => {
    const id = placeIds[rack];
    if (id === undefined) throw new Error(`the daemon knows no rack ${rack}`);
    return id;
  };

  return {
    async begin(batch, rack) {
      const { name, species, surface, boards } = onPaper(batch);
      const body = { name, placeId: placeOf(rack), species, surface, boards };
      const { id, plan } = await api('createBatch', { body });
      begun.set(id, { plan, boards });
      return id;
    },
    async coated(id, index, coat: CoatToLay, finishedAt) {
      const known = begun.get(id);
      const planned = known?.plan.coats[index];
      if (known === undefined || planned === undefined) {
        throw new Error(`the plan has no coat ${index}`);
      }
      const parts = [
        planned.mixture.paint,
        planned.mixture.rawLinseedOil,
        planned.mixture.turpentine,
      ];
      const { totalL, partsL } = mixture({
        areaM2: boardArea({ ...known.boards, faces: planned.faces }),
        spreadingM2PerL: planned.spreadingM2PerL,
        parts,
        lossPercent,
      });
      await api('createCoat', {
        params: { id },
        body: {
          coat: index,
          begunAt: toMoment(finishedAt - COATING_MS),
          finishedAt: toMoment(finishedAt),
          usedL: Number((totalL * coat.film).toFixed(1)),
          colour: coat.colour,
          tin: coat.tin,
        },
      });
      return (partsL[2] ?? 0) * coat.film;
    },
    async tested(id, gate, passed, on, at) {
      await api('createTest', { params: { id }, body: { at: toMoment(at), gate, passed, on } });
    },
    async moved(id, rack, at) {
      const body = { at: toMoment(at), placeId: placeOf(rack) };
      await api('createMove', { params: { id }, body });
    },
    async sunkIn(id, at) {
      const body = { at: toMoment(at), kind: 'sunk-in' as const };
      await api('createRemark', { params: { id }, body });
    },
    async closed(id) {
      await api('changeBatch', { params: { id }, body: { closed: true } });
    },
    async verdict(id, coat, gate) {
      const coats = await api('listCoats', { params: { id } });
      return coats.find((one) => one.coat === coat)?.gates[gate].verdict ?? 'wait';
    },
  };
}
