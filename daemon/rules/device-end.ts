/** How long log-ins hold. */
export interface DeviceSpan {
  readonly idleMs: number;
  readonly longestMs: number;
}

/** What is known of a device that asks; times are UTC epoch ms. */
export interface DeviceTimes {
  readonly kind: 'log-in' | 'tablet';
  readonly since: number;
  readonly seenAt: number;
}

/**
 * When a device has to log in again at the latest, as far as can be told now.
 *
 * @returns UTC epoch ms; null for a paired tablet, which stays until it is removed
 */
export function deviceEndsAt(device: DeviceTimes, span: DeviceSpan): number | null {
  if (device.kind === 'tablet') return null;
  return Math.min(device.seenAt + span.idleMs, device.since + span.longestMs);
}
