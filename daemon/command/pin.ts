import { existsSync } from 'node:fs';
import { type AccessFile, accessFile, openAccessFile } from '../access/access-file.ts';
import { pinCost, secretHasher } from '../access/secret-hash.ts';
import { pinFault, tidyPin } from '../rules/pin.ts';
import { loadSettings, SettingsError } from '../settings/load.ts';
import { type Typist, typist } from './ask-secret.ts';
import { commandArguments } from './command-arguments.ts';
import type { CommandIo } from './command-io.ts';

const usage = `boardcure pin [what] [options]: the PINs that changes are made with

  set                    choose or change the PIN of whoever runs the site (the default)
  set-operator           choose or change a second PIN, for recording work only
  remove                 remove both: changes are then taken from this computer only
  remove-operator        remove the second one
  log-out                log out every device; paired tablets stay
  status                 say which PINs are set
  --data, --config       of the daemon, as with serve

It asks for the PIN, or takes it from the first line of the standard input. It works while the daemon
runs and while it does not, and whoever may write the data folder needs no old PIN.`;

const acts = ['set', 'set-operator', 'remove', 'remove-operator', 'log-out', 'status'] as const;
type Act = (typeof acts)[number];

/**
 * `boardcure pin`: sets, changes and removes PINs in the data folder.
 *
 * @param args - what follows the word `pin`
 * @param io - where lines go
 * @param who - types the PIN
 * @returns exit code: 0 when done, 1 when refused, 2 for a wrong command line
 */
export async function pin(args: string[], io: CommandIo, who: Typist = typist()): Promise<number> {
  const given = commandArguments(args, []);
  if (given.kind === 'help') {
    io.stderr(usage);
    return 0;
  }
  const [what = 'set', ...more] = given.plain;
  const act = acts.find((one) => one === what);
  if (act === undefined || more.length > 0) {
    io.stderr(
      `"${given.plain.join(' ')}" is nothing that pin does. A PIN itself is not written on the command line, where others can read it.\n\n${usage}`,
    );
    return 2;
  }
  try {
    const { data } = loadSettings({ args: given.settings, env: io.env, cwd: io.cwd });
    if (!existsSync(data)) {
      io.stderr(`There is no data folder ${data}. Name the daemon's folder with --data.`);
      return 1;
    }
    const done = await perform(act, openAccessFile(accessFile(data)), who);
    io.stderr(done.says);
    if (!done.ok) return 1;
    return 0;
  } catch (cause) {
    if (!(cause instanceof SettingsError)) throw cause;
    io.stderr(cause.message);
    return 2;
  }
}

interface Done {
  readonly ok: boolean;
  readonly says: string;
}

async function perform(act: Act, file: AccessFile, who: Typist): Promise<Done> {
  switch (act) {
    case 'set':
      return setPin('own', file, who);
    case 'set-operator':
      return setPin('operate', file, who);
    case 'remove':
      await file.change((kept) => ({
        ...kept,
        pins: { own: null, operate: null },
        devices: kept.devices.filter(({ kind }) => kind === 'tablet'),
      }));
      return { ok: true, says: 'No PIN is set: changes are taken from this computer only.' };
    case 'remove-operator':
      await file.change((kept) => ({
        ...kept,
        pins: { ...kept.pins, operate: null },
        devices: kept.devices.filter(({ role }) => role !== 'operate'),
      }));
      return { ok: true, says: 'The PIN for recording work is removed.' };
    case 'log-out':
      await file.change((kept) => ({
        ...kept,
        devices: kept.devices.filter(({ kind }) => kind === 'tablet'),
      }));
      return { ok: true, says: 'Every device is logged out; paired tablets stay.' };
    case 'status': {
      const { pins, devices } = file.read();
      const set = (hash: unknown) => (hash === null ? 'not set' : 'set');
      const says = `PIN: ${set(pins.own)}. PIN for recording work: ${set(pins.operate)}. Devices logged in or paired: ${devices.length}.`;
      return { ok: true, says };
    }
  }
}

async function setPin(role: 'own' | 'operate', file: AccessFile, who: Typist): Promise<Done> {
  if (role === 'operate' && file.read().pins.own === null) {
    return { ok: false, says: 'Set the PIN of whoever runs the site first: boardcure pin set.' };
  }
  const typed = await who.askSecret('New PIN (6 figures or letters at least; it is not shown): ');
  if (typed === null || typed === '') {
    return { ok: false, says: `No PIN was given, and nothing is changed.\n\n${usage}` };
  }
  const wanted = tidyPin(typed);
  const fault = pinFault(wanted);
  if (fault !== null) return { ok: false, says: `${fault.text} Nothing is changed.` };
  if (who.isTerminal) {
    const again = await who.askSecret('The same again: ');
    if (again === null || tidyPin(again) !== wanted) {
      return { ok: false, says: 'The two were not the same. Nothing is changed.' };
    }
  }
  const hasher = secretHasher();
  const other = role === 'own' ? file.read().pins.operate : file.read().pins.own;
  if (other !== null && (await hasher.matches(wanted, other))) {
    return { ok: false, says: 'The two PINs have to differ. Nothing is changed.' };
  }
  const hash = await hasher.make(wanted, pinCost);
  await file.change((kept) => ({
    ...kept,
    pins: { ...kept.pins, [role]: hash },
    devices: kept.devices.filter((device) => device.kind === 'tablet' || device.role !== role),
  }));
  return {
    ok: true,
    says:
      role === 'own'
        ? 'The PIN is set. Whoever was logged in by an old one logs in again.'
        : 'The PIN for recording work is set.',
  };
}
