import type { FastifyInstance } from 'fastify';
import { BoardcureError } from '../../contract/problem.ts';
import { planReply } from '../../rules/fact-reply.ts';
import type { PlanFact } from '../../rules/facts.ts';
import { keepingWords } from '../../rules/keeping-paint.ts';
import { named } from '../../rules/record-check.ts';
import { mixture, stickMarks } from '../../science/paint.ts';
import { leftOverL } from '../../science/paint-quantity.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';

const undiluted = { paint: 1, rawLinseedOil: 0, turpentine: 0 };

export function planRoutes(app: FastifyInstance, { view, edits, now, newId }: HttpParts): void {
  register(app, 'listPlans', () => [...view.facts().plans.values()].map(planReply));

  register(app, 'createPlan', async ({ body }) => {
    const plan: PlanFact = {
      id: body.id ?? newId(),
      name: body.name,
      surface: body.surface,
      coats: body.coats,
      isDefault: false,
      createdAt: now(),
    };
    await edits.createPlan(plan);
    return planReply(named(view.facts().plans, plan.id, 'coating plan'));
  });

  register(app, 'mixture', ({ query }) => {
    const { paint = 0, rawLinseedOil = 0, turpentine = 0, potDiameterMm } = query;
    const given = paint + rawLinseedOil + turpentine > 0;
    const parts = given ? [paint, rawLinseedOil, turpentine] : Object.values(undiluted);
    return possible(() => {
      const { totalL, partsL } = mixture({
        areaM2: query.areaM2,
        spreadingM2PerL: query.spreadingM2PerL,
        parts,
        ...(query.lossPercent === undefined ? {} : { lossPercent: query.lossPercent }),
      });
      const [paintL = 0, rawLinseedOilL = 0, turpentineL = 0] = partsL;
      return {
        totalL,
        partsL: { paint: paintL, rawLinseedOil: rawLinseedOilL, turpentine: turpentineL },
        stickMarksMm:
          potDiameterMm === undefined
            ? null
            : stickMarks({ potDiameterMm, volumeL: totalL, parts }),
        leftOverL: query.usedL === undefined ? null : leftOverL(totalL, query.usedL),
        keeping: keepingWords(given ? { paint, rawLinseedOil, turpentine } : undiluted),
      };
    });
  });
}

/** What is outside of physics is the asker’s fault, not the daemon’s. */
function possible<T>(reckon: () => T): T {
  try {
    return reckon();
  } catch (cause) {
    if (!(cause instanceof RangeError)) throw cause;
    throw new BoardcureError('BC_REQUEST_INVALID', `${cause.message}.`, { cause });
  }
}
