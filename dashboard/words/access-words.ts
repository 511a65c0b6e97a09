import type { Device, Session } from '../../daemon/contract/access.ts';
import type { MqttMode, PairingSensor } from '../../daemon/contract/mqtt-access.ts';
import type { Role } from '../../daemon/contract/role.ts';

export const roleWords: Readonly<Record<Role, string>> = {
  look: 'may look',
  operate: 'may record work',
  own: 'may do everything',
};

export const deviceKindWords: Readonly<Record<Device['kind'], string>> = {
  'log-in': 'Logged in',
  tablet: 'Wall tablet',
};

export const modeWords: Readonly<Record<MqttMode, string>> = {
  open: 'Open: anyone on the network may publish readings. That is how it is tried out.',
  pairing: 'Pairing: anyone may still publish, while the sensors are given their names.',
  closed: 'Closed: only who has a name and a password may publish, and only as itself.',
};

export const pairingWords: Readonly<Record<PairingSensor['pairing'], string>> = {
  paired: 'Paired: publishes under its name',
  waiting: 'Waiting: has a password that it does not use yet',
  unpaired: 'Not paired yet',
  mixed: 'Something still publishes as this sensor without the password',
};

/** What this device may do and why, as sentences. */
export function standingWords({ role, by, look, pinSet }: Session): string {
  switch (by) {
    case 'log-in':
      return role === 'own'
        ? 'This device is logged in and may do everything.'
        : 'This device is logged in and may record work.';
    case 'pairing':
      return 'This is a paired wall tablet: it may look.';
    case 'this-computer':
      return 'No PIN is set: this computer may do everything, and everyone else may only look.';
    case 'network':
      return pinSet
        ? 'This device may look, as everyone on the local network may. To change something, log in.'
        : 'No PIN is set: changes are taken from the computer itself only.';
    case 'nothing':
      return look === 'log-in' && !pinSet
        ? 'Looking needs a log-in here, and no PIN is set yet.'
        : 'Looking needs a log-in here.';
  }
}
