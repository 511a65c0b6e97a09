import type { FastifyInstance } from 'fastify';
import type { MixtureQuery, MixtureReply } from '../../contract/mixture.ts';
import { BoardcureError } from '../../contract/problem.ts';
import type { Tin } from '../../contract/tin.ts';
import { coatedArea } from '../../rules/coated-area.ts';
import { keepingWords } from '../../rules/keeping-paint.ts';
import type { KnownFacts } from '../../rules/known-facts.ts';
import { amountsOf, enoughInTins, mixingSteps, potOf } from '../../rules/pot.ts';
import { named, noSuchCoat } from '../../rules/record-check.ts';
import { shoppingList, usualKeptPrimerL, usualLossPercent } from '../../rules/shopping.ts';
import { leftInTins } from '../../rules/tin-stock.ts';
import { mixture, stickMarks } from '../../science/paint.ts';
import { boardsPerLitre, leftOverL } from '../../science/paint-quantity.ts';
import type { HttpParts } from '../ports.ts';
import { possible } from '../possible.ts';
import { register } from '../register-route.ts';
import type { TradeView } from '../site-view.ts';

const undiluted = { paint: 1, rawLinseedOil: 0, turpentine: 0 };

/** The mixing bench: what goes into the pot, and what to buy. */
export function potRoutes(app: FastifyInstance, { view, now }: HttpParts): void {
  register(app, 'mixture', ({ query }) => {
    const facts = view.facts();
    const tins = [...facts.tins.values()].map((tin) => view.trade.tin(tin, now()));
    return possible(() => mixtureReply(query, facts, view.trade, tins));
  });

  register(app, 'shoppingList', ({ query }) => {
    const { batches, plans, coats } = view.facts();
    const sizes = (text: string | undefined) => (text ? text.split(',').map(Number) : []);
    return shoppingList({
      ...{ batches: [...batches.values()], plans, coats },
      lossPercent: query.lossPercent ?? usualLossPercent,
      keepPrimerL: query.keepPrimerL ?? usualKeptPrimerL,
      tinsL: {
        paint: sizes(query.paintTinsL),
        rawLinseedOil: sizes(query.oilTinsL),
        turpentine: sizes(query.turpentineTinsL),
      },
    });
  });
}

/** What is to be coated: as asked, or as the plan of a batch has it. */
function toCoat(query: MixtureQuery, facts: KnownFacts) {
  const { paint = 0, rawLinseedOil = 0, turpentine = 0, batchId } = query;
  const asked =
    paint + rawLinseedOil + turpentine > 0 ? { paint, rawLinseedOil, turpentine } : null;
  if (batchId === undefined) {
    const { areaM2 = 0, spreadingM2PerL = 0 } = query;
    return { areaM2, spreadingM2PerL, mixed: asked ?? undiluted, ofBatch: null };
  }
  const batch = named(facts.batches, batchId, 'batch');
  const plan = named(facts.plans, batch.planId, 'coating-plan');
  const done = (facts.coats.get(batch.id) ?? []).at(-1)?.coat ?? -1;
  const index = query.coat ?? Math.min(done + 1, plan.coats.length - 1);
  const planned = plan.coats[index];
  if (!planned) {
    throw new BoardcureError('BC_STATE_CONFLICT', noSuchCoat(plan, index), { pointer: '/coat' });
  }
  return {
    areaM2: query.areaM2 ?? coatedArea(batch.boards, planned.faces, planned.coverWidthMm),
    spreadingM2PerL: query.spreadingM2PerL ?? planned.spreadingM2PerL,
    mixed: asked ?? planned.mixture,
    ofBatch: { batch, planned, index },
  };
}

function mixtureReply(
  query: MixtureQuery,
  facts: KnownFacts,
  trade: TradeView,
  tins: readonly Tin[],
): MixtureReply {
  const { areaM2, spreadingM2PerL, mixed, ofBatch } = toCoat(query, facts);
  const parts = [mixed.paint, mixed.rawLinseedOil, mixed.turpentine];
  const { lossPercent, potDiameterMm } = query;
  const paintKgPerL = query.paintDensityKgPerL ?? null;
  const { totalL, partsL } = mixture({ areaM2, spreadingM2PerL, parts, lossPercent });
  const [paintL = 0, rawLinseedOilL = 0, turpentineL = 0] = partsL;
  const pot =
    potDiameterMm === undefined
      ? null
      : potOf(
          totalL,
          parts,
          { bottomMm: potDiameterMm, topMm: query.potTopDiameterMm, heightMm: query.potHeightMm },
          { fillPercent: query.fillPercent, paintKgPerL },
        );
  const keepingSaid = keepingWords(mixed);
  const stepsSaid = mixingSteps(mixed, pot);
  return {
    totalL,
    partsL: { paint: paintL, rawLinseedOil: rawLinseedOilL, turpentine: turpentineL },
    stickMarksMm:
      potDiameterMm === undefined ? null : stickMarks({ potDiameterMm, volumeL: totalL, parts }),
    leftOverL: query.usedL === undefined ? null : leftOverL(totalL, query.usedL),
    keeping: keepingSaid.map(({ text }) => text).join(' '),
    keepingSaid,
    areaM2,
    spreadingM2PerL,
    coat: ofBatch?.index ?? null,
    coatName: ofBatch?.planned.name ?? null,
    amounts: amountsOf(partsL, paintKgPerL),
    pot,
    steps: stepsSaid.map(({ text }) => text),
    stepsSaid,
    enough: enoughInTins(
      partsL,
      [
        query.havePaintL ?? leftInTins(tins, 'paint'),
        query.haveRawLinseedOilL ?? leftInTins(tins, 'oil'),
        query.haveTurpentineL ?? leftInTins(tins, 'turpentine'),
      ],
      ofBatch?.batch.boards.count ?? null,
    ),
    boardsPerLitre: ofBatch && perLitre(ofBatch, spreadingM2PerL, facts, trade),
  };
}

type OfBatch = NonNullable<ReturnType<typeof toCoat>['ofBatch']>;

/** How far a litre goes: by the plan, and by what such coats have used until now. */
function perLitre(
  { batch, planned, index }: OfBatch,
  spreadingM2PerL: number,
  { batches }: KnownFacts,
  trade: TradeView,
) {
  const board = { ...batch.boards, faces: planned.faces };
  let coatedM2 = 0;
  let usedL = 0;
  for (const coat of trade.recordedCoats()) {
    const planId = coat.planId ?? batches.get(coat.batchId)?.planId;
    if (planId !== batch.planId || coat.coat !== index || coat.usedL === null) continue;
    coatedM2 += trade.areaOf(coat) ?? 0;
    usedL += coat.usedL;
  }
  const soFarM2PerL = usedL > 0 ? coatedM2 / usedL : null;
  return {
    planned: boardsPerLitre(board, spreadingM2PerL),
    soFar: soFarM2PerL === null ? null : boardsPerLitre(board, soFarM2PerL),
    soFarM2PerL,
  };
}
