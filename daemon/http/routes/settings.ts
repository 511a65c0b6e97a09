import type { FastifyInstance } from 'fastify';
import { askerOf } from '../access-gate.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';

export function settingRoutes(app: FastifyInstance, { settings, access, now }: HttpParts): void {
  register(app, 'listSettings', () => settings.list());

  register(app, 'changeSettings', async ({ body }, request) => {
    const { device } = askerOf(request, access);
    await settings.choose(body, now(), device?.name ?? null);
    return settings.list();
  });
}
