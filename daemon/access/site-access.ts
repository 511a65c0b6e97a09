import { BoardcureError } from '../contract/problem.ts';
import type { Said } from '../contract/sentence.ts';
import type { DeviceSpan } from '../rules/device-end.ts';
import { pinFault, shownCode, tidyPin } from '../rules/pin.ts';
import { sentence } from '../wording/english.ts';
import { type AccessFile, asKept, type Kept } from './access-file.ts';
import { deviceList } from './device-list.ts';
import { oneTimeCodes } from './one-time-codes.ts';
import { type HashCost, HasherBusy, type SecretHasher } from './secret-hash.ts';
import { type Trier, tryCounter } from './try-counter.ts';

const setUpCodeSigns = 12;
const setUpCodeLastsMs = 86_400_000;
const pairingCodeSigns = 8;
const pairingCodeLastsMs = 600_000;

export interface SiteAccessParts {
  file: AccessFile;
  hasher: SecretHasher;
  /** What the hash of a PIN is made with. */
  pinCost: HashCost;
  look: 'open' | 'log-in';
  span: DeviceSpan;
  /** UTC epoch ms of the computer, also where the shed’s time is simulated. */
  now(): number;
  /** Milliseconds that only run forward. */
  upMs(): number;
  pause(ms: number): Promise<unknown>;
  newId(): string;
  /** Whom an address is counted for. */
  groupOf(address: string): string;
}

export interface Caller {
  address: string;
  known: string | undefined;
  isFromHere: boolean;
}

export interface PinChange {
  pin: string;
  role: 'own' | 'operate';
  currentPin: string | undefined;
  setUpCode: string | undefined;
  deviceName: string;
  device: { id: string; role: string; kind: string } | null;
}

/** Who may do what at this site: PINs, log-ins, tablets and the codes that lead to them. */
export function siteAccess(parts: SiteAccessParts) {
  const { file, hasher, look, upMs, groupOf } = parts;
  const devices = deviceList(parts);
  const tries = tryCounter(parts);
  const setUpCodes = oneTimeCodes<null>(setUpCodeSigns, setUpCodeLastsMs, upMs);
  const pairingCodes = oneTimeCodes<string>(pairingCodeSigns, pairingCodeLastsMs, upMs);
  const listeners = new Set<() => void>();
  const changed = () => {
    for (const listener of listeners) listener();
  };
  const pinSet = () => file.read().pins.own !== null;

  /** The computer itself is counted apart from the network, and so is each device known here. */
  function trierOf({ address, known, isFromHere }: Caller): Trier {
    if (isFromHere) return { source: 'here', isStranger: false };
    const name = devices.knownAs(known);
    if (name !== null) return { source: `known ${name}`, isStranger: false };
    return { source: groupOf(address), isStranger: true };
  }

  /** @param pointer - of the field that was wrong */
  async function attempt(
    caller: Caller,
    wrong: Said,
    pointer: string,
    isRight: () => Promise<boolean>,
  ) {
    const tried = await tries.attempt(trierOf(caller), isRight).catch((cause) => {
      if (!(cause instanceof HasherBusy)) throw cause;
      return { kind: 'wait', seconds: 5 } as const;
    });
    if (tried.kind === 'wait') {
      throw new BoardcureError(
        'BC_TRIES_EXHAUSTED',
        sentence('try-later', { seconds: tried.seconds }),
      );
    }
    if (!tried.right) throw new BoardcureError('BC_PIN_WRONG', wrong, { pointer });
  }

  async function makePin(change: PinChange): Promise<(kept: Kept) => Kept> {
    const pin = tidyPin(change.pin);
    const fault = pinFault(pin);
    if (fault !== null) throw new BoardcureError('BC_REQUEST_INVALID', fault, { pointer: '/pin' });
    const { pins } = file.read();
    const other = change.role === 'own' ? pins.operate : pins.own;
    if (other !== null && (await hasher.matches(pin, other))) {
      throw new BoardcureError('BC_REQUEST_INVALID', sentence('pin-as-the-other', {}), {
        pointer: '/pin',
      });
    }
    const hash = asKept(await hasher.make(pin, parts.pinCost));
    return (kept) => ({
      ...kept,
      pins: { ...kept.pins, [change.role]: hash },
      // Whoever came in by the old one logs in again; tablets were let in by a code.
      devices: kept.devices.filter(
        ({ kind, role, id }) =>
          kind === 'tablet' || id === change.device?.id || role !== change.role,
      ),
    });
  }

  return {
    state: () => {
      const { pins } = file.read();
      const set = pins.own !== null;
      return {
        pinSet: set,
        operatorPinSet: pins.operate !== null,
        look,
        setUpCode: !set && setUpCodes.waiting(),
      };
    },
    cookieName: devices.cookieName,
    carried: ({ session }: { session: string | undefined }) => devices.carried(session),

    /** The code that sets the first PIN, to be printed once; null when there is a PIN. */
    setUpCode: (): string | null => (pinSet() ? null : shownCode(setUpCodes.issue(null))),

    async logIn(pin: string, deviceName: string, caller: Caller) {
      if (!pinSet()) {
        throw new BoardcureError('BC_STATE_CONFLICT', sentence('pin-not-set', {}));
      }
      let role: 'own' | 'operate' = 'own';
      await attempt(caller, sentence('pin-wrong', {}), '/pin', async () => {
        const { pins } = file.read();
        const typed = tidyPin(pin);
        if (await hasher.matches(typed, pins.own)) return true;
        role = 'operate';
        return pins.operate !== null && (await hasher.matches(typed, pins.operate));
      });
      const letIn = await devices.letIn('log-in', role, deviceName);
      changed();
      return letIn;
    },

    async setPin(change: PinChange, caller: Caller) {
      const isFirst = !pinSet();
      if (isFirst && change.role === 'operate') {
        throw new BoardcureError('BC_STATE_CONFLICT', sentence('pin-own-first', {}));
      }
      if (isFirst && !caller.isFromHere) {
        const { setUpCode } = change;
        if (setUpCode === undefined) {
          throw new BoardcureError('BC_WRITE_NOT_ALLOWED', sentence('pin-first-from-here', {}));
        }
        // A code that was typed rightly must not be lost to a PIN that is too short.
        const makes = await makePin(change);
        await attempt(
          caller,
          sentence('code-wrong/set-up', {}),
          '/setUpCode',
          async () => setUpCodes.redeem(setUpCode) !== null,
        );
        return finish(change, makes);
      }
      if (!isFirst) {
        if (change.device?.role !== 'own') {
          throw new BoardcureError('BC_LOGIN_NEEDED', sentence('pin-after-log-in', {}));
        }
        if (change.role === 'own') {
          const { currentPin } = change;
          await attempt(caller, sentence('pin-wrong/current', {}), '/currentPin', async () =>
            currentPin === undefined
              ? false
              : hasher.matches(tidyPin(currentPin), file.read().pins.own),
          );
        }
      }
      return finish(change, await makePin(change));
    },

    async removeOperatorPin(): Promise<void> {
      await file.change((kept) => ({
        ...kept,
        pins: { ...kept.pins, operate: null },
        devices: kept.devices.filter(({ role }) => role !== 'operate'),
      }));
      changed();
    },

    devices: devices.all,
    async endDevice(id: string): Promise<boolean> {
      if (!devices.all().some((device) => device.id === id)) return false;
      await devices.end((device) => device.id === id);
      changed();
      return true;
    },
    async endDevices(tabletsToo: boolean): Promise<void> {
      await devices.end(({ kind }) => tabletsToo || kind === 'log-in', tabletsToo);
      changed();
    },

    newPairingCode: (name: string) => ({
      code: shownCode(pairingCodes.issue(name)),
      expiresAt: parts.now() + pairingCodeLastsMs,
    }),
    async pairTablet(code: string, caller: Caller) {
      let name = '';
      await attempt(caller, sentence('code-wrong/pairing', {}), '/code', async () => {
        const redeemed = pairingCodes.redeem(code);
        name = redeemed?.meaning ?? '';
        return redeemed !== null;
      });
      const letIn = await devices.letIn('tablet', 'look', name);
      changed();
      return letIn;
    },

    onChange(listener: () => void): () => void {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };

  async function finish(change: PinChange, makes: (kept: Kept) => Kept) {
    setUpCodes.forgetAll();
    // The device that asked goes on under a new log-in: its old token may have been seen.
    const letIn = await devices.letIn('log-in', 'own', change.deviceName, (kept) => {
      const made = makes(kept);
      return { ...made, devices: made.devices.filter(({ id }) => id !== change.device?.id) };
    });
    changed();
    return letIn;
  }
}
export type SiteAccess = ReturnType<typeof siteAccess>;
