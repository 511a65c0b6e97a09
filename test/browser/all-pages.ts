import type { RunningDaemon } from './running-daemon.ts';
import { rackWithCoat } from './shed-scene.ts';

/** Each page, its address, and a text that stands there once it is drawn. */
export interface AnyPage {
  readonly name: string;
  readonly path: (batchId: string) => string;
  readonly ready: string;
}

/** Fills a daemon so that every page has something to show. */
export async function furnish(daemon: RunningDaemon): Promise<{ batchId: string }> {
  const { batch } = await rackWithCoat(daemon, 'North rack', 60);
  await rackWithCoat(daemon, 'South rack', 90);
  await daemon.call('POST', 'places', { name: 'Spare rack', kind: 'rack' });
  await daemon.send('farm/attic/temp_f', '70.7');
  await daemon.publish('probe-7', 'air-temperature', [{ value: 18.2, at: Date.now() }]);
  return { batchId: batch.id };
}

/** Every page of a daemon that was furnished. */
export const allPages: readonly AnyPage[] = [
  { name: 'wall', path: () => '#/', ready: 'Ready to coat again' },
  { name: 'batch', path: (batchId) => `#/batch/${batchId}`, ready: 'What the boards may do' },
  { name: 'brush', path: () => '#/brush', ready: 'The hours ahead' },
  { name: 'pot', path: () => '#/pot', ready: 'What to buy' },
  { name: 'lock-up', path: () => '#/lock-up', ready: 'Print the card' },
  { name: 'notices', path: () => '#/notices', ready: 'How they are told' },
  { name: 'rack card', path: (batchId) => `#/print/rack?batchId=${batchId}`, ready: 'Felt dry' },
  { name: 'door card', path: () => '#/print/door', ready: 'Before you lock up' },
  { name: 'set-up', path: () => '#/setup', ready: 'probe-7' },
  { name: 'topics', path: () => '#/topics', ready: 'looks like 21.5 °C' },
  { name: 'rule', path: () => '#/topics/farm%2Fattic%2Ftemp_f', ready: 'It would take one' },
  { name: 'round', path: () => '#/round', ready: 'The morning round' },
  { name: 'steps', path: (batchId) => `#/batch/${batchId}/coating`, ready: 'Second coat' },
  { name: 'waiting', path: () => '#/waiting', ready: 'Nothing waits' },
  { name: 'more', path: () => '#/more', ready: 'The seasons' },
  { name: 'access', path: () => '#/access', ready: 'Choose a PIN' },
  { name: 'what comes', path: () => '#/ahead', ready: 'What this rests on' },
  { name: 'report', path: (batchId) => `#/batch/${batchId}/report`, ready: 'What was recorded' },
  { name: 'seasons', path: () => '#/season', ready: 'The model against your thumb' },
  { name: 'routes', path: () => '#/api', ready: 'Start a batch' },
  { name: 'cautions', path: () => '#/cautions', ready: 'Solvent vapour' },
  { name: 'first run, site', path: () => '#/first-run/site', ready: 'Keep the name' },
  {
    name: 'first run, sensor',
    path: () => '#/first-run/sensor',
    ready: 'probe-7',
  },
  { name: 'first run, boards', path: () => '#/first-run/batch', ready: 'Start the batch' },
  { name: 'first run, verdict', path: () => '#/first-run/verdict', ready: 'What comes next' },
  { name: 'records', path: () => '#/records', ready: '4 records' },
  { name: 'settings', path: () => '#/settings/cure', ready: 'cure.datumC' },
  { name: 'unknown', path: () => '#/attic', ready: 'No such page' },
];
