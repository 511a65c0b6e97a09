import type { Role } from '../contract/role.ts';

/* What the server needs to know of who may do what; handed over by main. */

export interface SiteAccess {
  pinSet: boolean;
  operatorPinSet: boolean;
  look: 'open' | 'log-in';
  /** Whether the one-time code of the start is still good. */
  setUpCode: boolean;
}

/** A device that is logged in or paired; times are UTC epoch ms. */
export interface AccessDevice {
  id: string;
  kind: 'log-in' | 'tablet';
  role: Role;
  name: string;
  since: number;
  seenAt: number | null;
}

/** The cookies of ours that a request brought. */
export interface Tokens {
  session: string | undefined;
  /** Left by an earlier log-in: it lets nobody in, but its tries are counted for themselves. */
  known: string | undefined;
}

/** A device that a token stands for. */
export interface Carried extends AccessDevice {
  expiresAt: number | null;
  /** A token that holds longer, to be sent back; null while the old one is young. */
  renewed: string | null;
}

/** Tokens for a device that was let in. */
export interface LetIn {
  device: AccessDevice;
  session: string;
  known: string | null;
}

/** Who tries a PIN or a code. */
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
  /** The device that asks; null when it is none of ours. */
  device: AccessDevice | null;
}

/** Refusals are thrown as `BoardcureError`. */
export interface AccessPort {
  state(): SiteAccess;
  /** Sets the cookies of two daemons on one computer apart. */
  cookieName(): string;
  carried(tokens: Tokens): Carried | null;
  logIn(pin: string, deviceName: string, caller: Caller): Promise<LetIn>;
  setPin(change: PinChange, caller: Caller): Promise<LetIn>;
  removeOperatorPin(): Promise<void>;
  devices(): AccessDevice[];
  /** False when there is no such device. */
  endDevice(id: string): Promise<boolean>;
  endDevices(tabletsToo: boolean): Promise<void>;
  newPairingCode(name: string): { code: string; expiresAt: number };
  pairTablet(code: string, caller: Caller): Promise<LetIn>;
  /** Calls back after someone lost or won access; returns how to stop. */
  onChange(listener: () => void): () => void;
}
