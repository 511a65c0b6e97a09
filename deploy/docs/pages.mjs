import { runtimePackages } from '../release/runtime-packages.mjs';
import { asyncApi } from './asyncapi.mjs';
import { httpPage } from './http-page.mjs';
import { licencesPage } from './licences-page.mjs';
import { metricsPage } from './metrics-page.mjs';
import { mqttPage } from './mqtt-page.mjs';
import { settingsExample, settingsPage } from './settings-page.mjs';

/**
 * What the pages are made from.
 *
 * @typedef {object} DocParts
 * @property {any} settings the settings’ zod schema
 * @property {Record<string, any>} routes the table of routes
 * @property {Record<string, any>} problems the table of errors
 * @property {Record<string, any>} channels the table of topics
 * @property {import('./mqtt-page.mjs').Quantities} quantities
 * @property {Record<string, any>} metrics the table of figures
 * @property {any} lock package-lock.json
 * @property {string[]} imported packages that run, as the program imports them
 * @property {string[]} bundled packages that are part of the dashboard’s file
 */

/**
 * All generated pages by their name in `deploy`.
 *
 * @param {DocParts} parts
 * @returns {Record<string, string>}
 */
export function generatedPages(parts) {
  const settings = parts.settings.toJSONSchema({ io: 'input' });
  const routes = Object.values(parts.routes).map(({ params, query, body, reply, ...route }) => ({
    ...route,
    ...(params ? { params: params.toJSONSchema({ io: 'input' }) } : {}),
    ...(query ? { query: query.toJSONSchema({ io: 'input' }) } : {}),
    ...(body ? { body: body.toJSONSchema({ io: 'input' }) } : {}),
    reply: reply.toJSONSchema(),
  }));
  const channels = Object.fromEntries(
    Object.entries(parts.channels).map(([name, { payload, ...channel }]) => [
      name,
      {
        ...channel,
        // AsyncAPI 3.0 takes payloads in JSON Schema draft 7 unless told otherwise.
        payload: payload.toJSONSchema({
          io: channel.direction === 'in' ? 'input' : 'output',
          target: 'draft-7',
        }),
      },
    ]),
  );
  const shipped = new Set(runtimePackages(parts.lock, [...parts.imported, ...parts.bundled]));
  return {
    'settings.md': settingsPage(settings),
    'boardcure.toml': settingsExample(settings),
    'http.md': httpPage(routes, parts.problems),
    'mqtt.md': mqttPage(Object.values(channels), parts.quantities),
    'asyncapi.json': `${JSON.stringify(asyncApi(channels, parts.lock.version), null, 2)}\n`,
    'metrics.md': metricsPage(Object.values(parts.metrics)),
    'licences.md': licencesPage(parts.lock, shipped),
  };
}
