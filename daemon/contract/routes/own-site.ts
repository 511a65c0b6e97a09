import type { Route } from '../route.ts';
import { NewSimulatedShed, SimulatedShed, Site, SiteChange } from '../site.ts';

export const ownSiteRoutes = {
  readSite: {
    method: 'GET',
    path: '/api/v1/site',
    summary: 'What the site is called, and how sensors reach it',
    status: 200,
    reply: Site,
  },
  changeSite: {
    method: 'PATCH',
    path: '/api/v1/site',
    summary: 'Give the site a name for its pages; its topics stay',
    body: SiteChange,
    status: 200,
    reply: Site,
  },
  readSimulatedShed: {
    method: 'GET',
    path: '/api/v1/simulated-shed',
    summary: 'Whether a simulated shed runs beside this site, and at which port',
    status: 200,
    reply: SimulatedShed,
  },
  startSimulatedShed: {
    method: 'POST',
    path: '/api/v1/simulated-shed',
    summary: 'Run a simulated shed beside this site, with data of its own that nobody keeps',
    body: NewSimulatedShed,
    status: 201,
    reply: SimulatedShed,
  },
  stopSimulatedShed: {
    method: 'DELETE',
    path: '/api/v1/simulated-shed',
    summary: 'End the simulated shed and remove all it made',
    role: 'operate',
    status: 200,
    reply: SimulatedShed,
  },
} as const satisfies Record<string, Route>;
