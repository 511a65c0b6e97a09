import type { FastifyInstance } from 'fastify';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';

export function settingRoutes(app: FastifyInstance, { settingList }: HttpParts): void {
  register(app, 'listSettings', () => settingList());
}
