import type { NewCoat } from '../contract/coat.ts';
import { BoardcureError } from '../contract/problem.ts';
import type { BatchFact, CoatFact, NewNoticeFact } from '../rules/facts.ts';
import { ragsCaution } from '../rules/notice.ts';
import { litresUsed } from '../rules/pot.ts';
import { checkCoat, checkPast, named, referred } from '../rules/record-check.ts';
import { sentence } from '../wording/english.ts';
import type { HttpParts } from './ports.ts';
import { possible } from './possible.ts';

/** Makes a coat out of what was entered, with what everyone is to be told after one. */
export function newCoat(
  { view, now, newId }: Pick<HttpParts, 'view' | 'now' | 'newId'>,
  batch: BatchFact,
  body: NewCoat,
): { coat: CoatFact; caution: NewNoticeFact } {
  const { plans, coats, tins } = view.facts();
  const existing = coats.get(batch.id) ?? [];
  const id = body.id ?? newId();
  // Sent again, it goes by the version of the plan that it went by then.
  const planId = existing.find((one) => one.id === id)?.planId ?? batch.planId;
  const plan = named(plans, planId, 'coating-plan');
  const at = now();
  const finishedAt = Date.parse(body.finishedAt);
  const begunAt = body.begunAt ? Date.parse(body.begunAt) : null;
  checkPast(finishedAt, at, '/finishedAt');
  checkCoat({ id, coat: body.coat, begunAt, finishedAt }, plan, existing);
  const taken = existing.find((one) => one.coat === body.coat && one.id !== id);
  if (taken) {
    throw new BoardcureError('BC_STATE_CONFLICT', sentence('coat-recorded', { coat: body.coat }), {
      pointer: '/coat',
    });
  }
  const { pots } = body;
  const usedL = pots ? possible(() => litresUsed(pots)) : null;
  const planned = plan.coats[body.coat];
  if (!planned) throw new Error(`The plan ${plan.id} lost coat ${body.coat}.`);
  const tin = body.tinId ? referred(tins, body.tinId, 'tin', '/tinId') : null;
  const { text, code, values = {} } = ragsCaution();
  const told = { code, values };
  return {
    coat: {
      id,
      batchId: batch.id,
      coat: body.coat,
      begunAt,
      finishedAt,
      mixture: planned.mixture,
      faces: body.faces ?? planned.faces,
      usedL: body.usedL ?? usedL,
      colour: body.colour ?? tin?.colour ?? null,
      tin: body.tin ?? tin?.name ?? null,
      tinId: tin?.id ?? null,
      planId,
    },
    caution: {
      id: newId(),
      kind: 'rags',
      subject: batch.id,
      ...{ text, told },
      raisedAt: at,
      seenAt: null,
      clearedAt: null,
    },
  };
}
