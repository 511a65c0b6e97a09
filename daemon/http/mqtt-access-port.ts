import type { z } from 'zod';
import type { MadeMqttLogin, MqttAccess, MqttMode, NewMqttLogin } from '../contract/mqtt-access.ts';

/** A sensor as the store knows it; times are UTC epoch ms. */
export interface HeardSensor {
  id: string;
  name: string | null;
  latestAt: number | null;
}

/** Names and passwords at the broker; refusals are thrown as `BoardcureError`. */
export interface MqttAccessPort {
  state(sensors: readonly HeardSensor[]): MqttAccess;
  make(
    name: string,
    kind: z.output<typeof NewMqttLogin>['kind'],
    sensors: string[],
  ): Promise<MadeMqttLogin>;
  /** False when there is no such name. */
  assign(name: string, sensors: string[]): Promise<boolean>;
  remove(name: string): Promise<boolean>;
  setMode(
    mode: MqttMode,
    sensors: readonly HeardSensor[],
    allowed: { silence: readonly string[]; silenceListeners: boolean },
  ): Promise<void>;
}
