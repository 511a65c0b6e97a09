import type { OverviewBatch, OverviewPlace } from '../../daemon/contract/overview.ts';
import type { Trade } from '../../daemon/contract/trade.ts';

/** What to do with the boards of a batch on the round. */
export type RackCall = 'leave' | 'feel' | 'go-on' | 'held' | 'bare' | 'done' | 'no-data';

/** What is wrong with the air of a place. */
export type AirFault = 'cold' | 'damp' | 'stuffy' | 'silent';

/** Leave it, feel it or go on, by the verdict for the job that the batch waits for. */
export function rackCall(
  { coat, nextGate, verdict }: Pick<OverviewBatch, 'coat' | 'nextGate' | 'verdict'>,
  hasAir: boolean,
): RackCall {
  if (coat === null) return 'bare';
  if (nextGate === null) return 'done';
  if (verdict === null || !hasAir) return 'no-data';
  switch (verdict.verdict) {
    case 'wait':
      return 'leave';
    case 'test':
      return 'feel';
    case 'ready':
      return 'go-on';
    case 'hold':
      return 'held';
  }
}

/**
 * What is wrong with the air of a place, the worst first.
 *
 * @param limits - as the settings have them; null while they are not known, then the air alone speaks
 */
export function airFaults(
  { air, airflow }: Pick<OverviewPlace, 'air' | 'airflow'>,
  limits: Pick<Trade['application'], 'slowBelowC' | 'dampestRhPercent'> | null,
): AirFault[] {
  if (air.tempC === null && air.rhPercent === null) return ['silent'];
  return [
    air.stale ? ('silent' as const) : null,
    limits !== null && air.tempC !== null && air.tempC < limits.slowBelowC
      ? ('cold' as const)
      : null,
    limits !== null && air.rhPercent !== null && air.rhPercent > limits.dampestRhPercent
      ? ('damp' as const)
      : null,
    airflow === 'poor' ? ('stuffy' as const) : null,
  ].filter((fault) => fault !== null);
}
