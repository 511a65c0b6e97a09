import type { FastifyInstance } from 'fastify';
import type { Site } from '../../contract/site.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';

/** What the site is called and how sensors reach it, and the simulated shed beside it. */
export function ownSiteRoutes(
  app: FastifyInstance,
  { site, ownSite, edits, timeZone, now }: HttpParts,
): void {
  const reply = (): Site => ({
    topicName: site,
    name: ownSite.name(),
    timeZone,
    timeZoneFrom: ownSite.timeZoneFrom,
    broker: ownSite.broker(),
    addresses: ownSite.addresses(),
  });

  register(app, 'readSite', reply);

  register(app, 'changeSite', async ({ body }) => {
    if (body.name !== undefined) await edits.nameSite(body.name, now());
    return reply();
  });

  register(app, 'readSimulatedShed', () => ownSite.simulated.state());

  register(app, 'startSimulatedShed', ({ body }) => ownSite.simulated.start(body.speed ?? null));

  register(app, 'stopSimulatedShed', async () => {
    await ownSite.simulated.stop();
    return ownSite.simulated.state();
  });
}
