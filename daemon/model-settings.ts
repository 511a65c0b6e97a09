import type { ModelPair, NamedModel } from './monitor/hour-book.ts';
import { startingPriorHoursAt20C } from './rules/gate-need.ts';
import type { CureModel } from './science/cure.ts';
import { degreeHoursPerEquivalentHour } from './science/cure-rate.ts';
import type { TouchPrior } from './science/touch.ts';
import type { Settings } from './settings/schema.ts';

/** Version of the reckoning itself: raise it when the same readings would give other sums. */
const reckoning = 1;
/** Both rates are relative to this temperature, °C. */
const referenceC = 20;

/** The two cure models that the settings ask for, the ruling one first. */
export function modelPair(cure: Settings['cure']): ModelPair {
  const { datumC, activationEnergyJPerMol, maxGapHours, capC } = cure;
  const nurseSaul = named({ rate: 'nurse-saul', datumC, maxGapHours }, capC);
  const arrhenius = named(
    { rate: 'arrhenius', activationEnergyJPerMol, referenceC, maxGapHours },
    capC,
  );
  return cure.ruling === 'nurse-saul'
    ? { ruling: nurseSaul, beside: arrhenius }
    : { ruling: arrhenius, beside: nurseSaul };
}

function named(model: CureModel, capC: number): NamedModel {
  const rate =
    model.rate === 'nurse-saul'
      ? `nurse-saul datum=${model.datumC}`
      : `arrhenius energy=${model.activationEnergyJPerMol} reference=${model.referenceC}`;
  return { name: `${rate} gap=${model.maxGapHours} cap=${capC} v${reckoning}`, model, capC };
}

/** What recoating is believed to need before any test, °C·h in the ruling model’s measure. */
export function requirementPrior(ruling: NamedModel): TouchPrior {
  const perHour = degreeHoursPerEquivalentHour(ruling.model);
  return {
    p10: startingPriorHoursAt20C.p10 * perHour,
    p90: startingPriorHoursAt20C.p90 * perHour,
  };
}
