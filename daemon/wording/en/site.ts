import type { Phrases } from '../phrase.ts';
import type { SiteSentences } from '../subject/site.ts';

const wasSet =
  (way: string) =>
  ({ minutes }: { minutes: number }): string =>
    `The computer’s clock was set ${way} by ${minutes} min, and no time service confirms it. Time goes on as before, so that no sum is bent; if the new time is right, restart Boardcure.`;

export const site: Phrases<SiteSentences> = {
  'disk-full': () =>
    'The disk is full: readings are not acknowledged, so that sensors keep them. Free some space; recording goes on by itself.',
  'disk-low': ({ freeMiB }) =>
    `Only ${freeMiB} MiB are left on the disk of the data folder: make room, or readings will have to wait at their sensors.`,
  'broker-away': () => 'The MQTT broker is out of reach; readings wait there.',
  'clock-not-set': () =>
    'The computer’s clock has not been set. Readings without a time of their own are kept and take their place once it is: give the computer a network with a time service, or set its clock.',
  'clock-was-set/forward': wasSet('forward'),
  'clock-was-set/back': wasSet('back'),
  'sensor-clock/ahead': ({ sensor, minutes }) =>
    `The clock of sensor ${sensor} is ${minutes} min ahead: its readings are dated by their arrival. Set its clock.`,
  'sensor-clock/behind': ({ sensor, minutes }) =>
    `The clock of sensor ${sensor} is ${minutes} min behind, or its readings are that long on their way: they keep the time they give. Set its clock, or let it send none.`,
  'folder-gone': ({ name }) =>
    `The data folder ${name} cannot be reached: what is taken in now goes into a file that nobody will find again. See that its disk is mounted, put the folder back, and restart Boardcure.`,
  'database-damaged': ({ found }) =>
    `The database is damaged (${found}). Readings are still taken in. Stop Boardcure and put a backup in its place: boardcure restore <file> --replace.`,
  'backup-not-made': ({ because }) => `The last backup by night was not made. ${because}`,
};
