import { setTimeout as pause } from 'node:timers/promises';
import type { Batch } from '../../daemon/contract/batch.ts';
import type { Coat } from '../../daemon/contract/coat.ts';
import type { Health, Refused } from '../../daemon/contract/health.ts';
import type { Problem } from '../../daemon/contract/problem.ts';
import type { Sensor } from '../../daemon/contract/sensor.ts';

export interface Answer<T> {
  status: number;
  type: string;
  body: T;
}

/** Talks to a daemon of this computer as the page does. */
export function siteApi(http: number) {
  async function ask<T>(method: string, path: string, body?: unknown): Promise<Answer<T>> {
    const reply = await fetch(`http://127.0.0.1:${http}${path}`, {
      method,
      ...(body === undefined
        ? {}
        : {
            headers: { 'content-type': 'application/json' },
            body: typeof body === 'string' ? body : JSON.stringify(body),
          }),
    });
    const type = reply.headers.get('content-type') ?? '';
    return { status: reply.status, type, body: (await reply.json()) as T };
  }
  async function expectOk<T>(asked: Promise<Answer<T>>): Promise<T> {
    const { status, body } = await asked;
    if (status >= 300) throw new Error(`Status ${status}: ${JSON.stringify(body)}`);
    return body;
  }
  const get = <T>(path: string) => expectOk(ask<T>('GET', path));
  return {
    ask,
    askProblem: (method: string, path: string, body?: unknown) => ask<Problem>(method, path, body),
    health: () => get<Health>('/healthz'),
    /** Settles once everything is as it should be: an external broker has answered too. */
    async healthy(): Promise<void> {
      for (let attempt = 0; attempt < 200; attempt++) {
        if ((await this.health()).status === 'ok') return;
        await pause(25);
      }
      throw new Error(`Not healthy: ${(await this.health()).reasons.join(' ')}`);
    },
    refused: () => get<Refused[]>('/api/v1/refused'),
    sensors: () => get<Sensor[]>('/api/v1/sensors'),
    batch: (id: string) => get<Batch>(`/api/v1/batches/${id}`),
    createRoom: (name: string) =>
      expectOk(ask<{ id: string }>('POST', '/api/v1/places', { name, kind: 'room' })),
    createBatch: (name: string, placeId: string) =>
      expectOk(
        ask<Batch>('POST', '/api/v1/batches', {
          ...{ name, placeId, species: 'scots-pine', surface: 'sawn' },
          boards: { count: 20, lengthMm: 3600, widthMm: 148, thicknessMm: 22 },
        }),
      ),
    recordCoat: (batchId: string, finishedAt: number) =>
      expectOk(
        ask<Coat>('POST', `/api/v1/batches/${batchId}/coats`, {
          coat: 0,
          finishedAt: new Date(finishedAt).toISOString(),
        }),
      ),
    /** Places a sensor as soon as it has been heard. */
    async placeSensor(sensor: string, placeId: string): Promise<void> {
      for (let attempt = 0; attempt < 200; attempt++) {
        const { status } = await ask('PATCH', `/api/v1/sensors/${sensor}`, { placeId });
        if (status === 200) return;
        await pause(25);
      }
      throw new Error(`The sensor ${sensor} was never heard.`);
    },
    /** The coat of a batch once nothing is being worked in any more. */
    async settledCoat(batchId: string): Promise<Coat> {
      for (let attempt = 0; attempt < 400; attempt++) {
        const batch = await this.batch(batchId);
        const coat = batch.coats[0];
        if (!batch.recomputing && coat) return coat;
        await pause(25);
      }
      throw new Error('The sums never settled.');
    },
  };
}
export type SiteApi = ReturnType<typeof siteApi>;
