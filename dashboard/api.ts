import type { Problem } from '../daemon/contract/problem.ts';
import type { RouteName, RouteReply, RouteSend, Routes } from '../daemon/contract/routes.ts';

/** Method and path of what this page uses; the compiler holds them to the contract. */
const addresses = {
  overview: { method: 'GET', path: '/api/v1/overview' },
  readSite: { method: 'GET', path: '/api/v1/site' },
  changeSite: { method: 'PATCH', path: '/api/v1/site' },
  readSimulatedShed: { method: 'GET', path: '/api/v1/simulated-shed' },
  startSimulatedShed: { method: 'POST', path: '/api/v1/simulated-shed' },
  stopSimulatedShed: { method: 'DELETE', path: '/api/v1/simulated-shed' },
  listRecords: { method: 'GET', path: '/api/v1/records' },
  listSettings: { method: 'GET', path: '/api/v1/settings' },
  changeSettings: { method: 'PATCH', path: '/api/v1/settings' },
  readPlace: { method: 'GET', path: '/api/v1/places/:id' },
  changePlace: { method: 'PATCH', path: '/api/v1/places/:id' },
  createPlace: { method: 'POST', path: '/api/v1/places' },
  listSensors: { method: 'GET', path: '/api/v1/sensors' },
  changeSensor: { method: 'PATCH', path: '/api/v1/sensors/:id' },
  listTopicRules: { method: 'GET', path: '/api/v1/topic-rules' },
  createTopicRule: { method: 'POST', path: '/api/v1/topic-rules' },
  tryTopicRule: { method: 'POST', path: '/api/v1/topic-rules/try' },
  changeTopicRule: { method: 'PATCH', path: '/api/v1/topic-rules/:id' },
  removeTopicRule: { method: 'DELETE', path: '/api/v1/topic-rules/:id' },
  foundTopics: { method: 'GET', path: '/api/v1/found-topics' },
  listenForTopics: { method: 'POST', path: '/api/v1/found-topics/listen' },
  listCalibrations: { method: 'GET', path: '/api/v1/sensors/:id/calibrations' },
  createCalibration: { method: 'POST', path: '/api/v1/sensors/:id/calibrations' },
  withdrawCalibration: { method: 'DELETE', path: '/api/v1/calibrations/:id' },
  compareSensors: { method: 'GET', path: '/api/v1/comparisons' },
  acceptComparison: { method: 'POST', path: '/api/v1/comparisons' },
  listPlans: { method: 'GET', path: '/api/v1/plans' },
  listBatches: { method: 'GET', path: '/api/v1/batches' },
  createBatch: { method: 'POST', path: '/api/v1/batches' },
  readBatch: { method: 'GET', path: '/api/v1/batches/:id' },
  changeBatch: { method: 'PATCH', path: '/api/v1/batches/:id' },
  batchCurves: { method: 'GET', path: '/api/v1/batches/:id/curves' },
  placeCurves: { method: 'GET', path: '/api/v1/places/:id/curves' },
  sensorCurves: { method: 'GET', path: '/api/v1/sensors/:id/curves' },
  airChanges: { method: 'GET', path: '/api/v1/places/:id/air-changes' },
  createCoat: { method: 'POST', path: '/api/v1/batches/:id/coats' },
  removeCoat: { method: 'DELETE', path: '/api/v1/batches/:id/coats/:part' },
  createMove: { method: 'POST', path: '/api/v1/batches/:id/moves' },
  createTest: { method: 'POST', path: '/api/v1/batches/:id/tests' },
  createRemark: { method: 'POST', path: '/api/v1/batches/:id/remarks' },
  splitBatch: { method: 'POST', path: '/api/v1/batches/:id/splits' },
  mergeBatch: { method: 'POST', path: '/api/v1/batches/:id/merges' },
  tickMounting: { method: 'POST', path: '/api/v1/batches/:id/moves/:part/ticks' },
  listCoatings: { method: 'GET', path: '/api/v1/batches/:id/coatings' },
  beginCoating: { method: 'POST', path: '/api/v1/batches/:id/coatings' },
  tickCoating: { method: 'POST', path: '/api/v1/batches/:id/coatings/:part/steps' },
  endCoating: { method: 'POST', path: '/api/v1/batches/:id/coatings/:part/end' },
  createPlan: { method: 'POST', path: '/api/v1/plans' },
  createPlanVersion: { method: 'POST', path: '/api/v1/plans/:id/versions' },
  listTins: { method: 'GET', path: '/api/v1/tins' },
  createTin: { method: 'POST', path: '/api/v1/tins' },
  changeTin: { method: 'PATCH', path: '/api/v1/tins/:id' },
  morningRound: { method: 'GET', path: '/api/v1/morning-round' },
  trade: { method: 'GET', path: '/api/v1/trade' },
  createReading: { method: 'POST', path: '/api/v1/readings' },
  changeNotice: { method: 'PATCH', path: '/api/v1/notices/:id' },
  readSession: { method: 'GET', path: '/api/v1/session' },
  logIn: { method: 'POST', path: '/api/v1/session' },
  logOut: { method: 'DELETE', path: '/api/v1/session' },
  setPin: { method: 'POST', path: '/api/v1/pin' },
  removePin: { method: 'DELETE', path: '/api/v1/pin/:role' },
  listDevices: { method: 'GET', path: '/api/v1/devices' },
  endDevice: { method: 'DELETE', path: '/api/v1/devices/:id' },
  endDevices: { method: 'DELETE', path: '/api/v1/devices' },
  createPairingCode: { method: 'POST', path: '/api/v1/tablets/code' },
  readMqttAccess: { method: 'GET', path: '/api/v1/mqtt-access' },
  changeCalibration: { method: 'PATCH', path: '/api/v1/calibrations/:id' },
  changeMqttMode: { method: 'PATCH', path: '/api/v1/mqtt-access' },
  createMqttLogin: { method: 'POST', path: '/api/v1/mqtt-logins' },
  removeMqttLogin: { method: 'DELETE', path: '/api/v1/mqtt-logins/:id' },
  pairTablet: { method: 'POST', path: '/api/v1/tablets' },
  planAhead: { method: 'GET', path: '/api/v1/plan-ahead' },
  whatHelps: { method: 'GET', path: '/api/v1/batches/:id/what-helps' },
  batchReport: { method: 'GET', path: '/api/v1/batches/:id/report' },
  season: { method: 'GET', path: '/api/v1/season' },
  listPhotos: { method: 'GET', path: '/api/v1/batches/:id/photos' },
  createPhoto: { method: 'POST', path: '/api/v1/batches/:id/photos' },
  removePhoto: { method: 'DELETE', path: '/api/v1/batches/:id/photos/:part' },
  listNotices: { method: 'GET', path: '/api/v1/notices' },
  readNoticeChannels: { method: 'GET', path: '/api/v1/notice-channels' },
  fitToBrush: { method: 'GET', path: '/api/v1/fit-to-brush' },
  readLockUp: { method: 'GET', path: '/api/v1/lock-up' },
  tickLockUp: { method: 'POST', path: '/api/v1/lock-up/ticks' },
  mixture: { method: 'GET', path: '/api/v1/mixture' },
  shoppingList: { method: 'GET', path: '/api/v1/shopping-list' },
  listRefused: { method: 'GET', path: '/api/v1/refused' },
} as const satisfies {
  [N in RouteName]?: { method: Routes[N]['method']; path: Routes[N]['path'] };
};

export type Used = keyof typeof addresses;

/** What came of a call: never an exception, always something that can be shown. */
export type Outcome<T> =
  | {
      readonly kind: 'done';
      readonly reply: T /** What was last heard, when the daemon is away: since when, this device’s clock. */;
      readonly oldSince?: number;
    }
  | { readonly kind: 'problem'; readonly problem: Problem };

/** What a route is handed: params, query and body, as far as it has them. */
export type Given<N extends RouteName> = {
  [K in keyof RouteSend<N> as RouteSend<N>[K] extends undefined ? never : K]: RouteSend<N>[K];
};

export interface Api {
  /** Calls a route of the contract by its name. */
  call<N extends Used>(name: N, given: Given<N>): Promise<Outcome<RouteReply<N>>>;
  /** Reads a document that is no route of the contract, such as the description of the routes. */
  document(path: string): Promise<Outcome<unknown>>;
}

const PATIENCE_MS = 15_000;

/** Keeps what was last heard, for when the daemon is away. */
export interface LastHeard {
  get(address: string): Promise<{ reply: unknown; heardAt: number } | undefined>;
  put(address: string, kept: { reply: unknown; heardAt: number }): Promise<void>;
  /** Forgets all: whoever holds this device may not look any more. */
  clear(): Promise<void>;
}

/** What is worth seeing when it is old, as long as it says so. */
const worthKeeping: readonly Used[] = [
  'overview',
  'readBatch',
  'batchCurves',
  'listCoatings',
  'listTins',
  'listBatches',
  'morningRound',
  'trade',
];

/**
 * @param send - the browser’s `fetch`
 * @param logIn - asks whoever is there for the PIN; true when they are logged in
 * @param heard - keeps the last replies of some routes
 */
export function createApi(
  send: typeof fetch,
  logIn: () => Promise<boolean>,
  heard: LastHeard,
): Api {
  async function request(method: string, path: string, body: unknown): Promise<Outcome<unknown>> {
    const patience = new AbortController();
    const timer = setTimeout(() => patience.abort(), PATIENCE_MS);
    try {
      const response = await send(path, {
        method,
        signal: patience.signal,
        headers: {
          // A form of another site cannot send it: the daemon asks for it with a log-in.
          'x-boardcure-request': '1',
          ...(body === undefined ? {} : { 'content-type': 'application/json' }),
        },
        ...(body === undefined ? {} : { body: JSON.stringify(body, noNumberAsText) }),
      });
      const reply: unknown = await response.json();
      if (response.ok) return { kind: 'done', reply };
      return { kind: 'problem', problem: isProblem(reply) ? reply : unreadable(response.status) };
    } catch {
      return { kind: 'problem', problem: away };
    } finally {
      clearTimeout(timer);
    }
  }
  /** The reply, kept for later; or the one that was kept, where nothing answers. */
  async function rememberedAt<T>(address: string, outcome: Outcome<T>): Promise<Outcome<T>> {
    // A browser that keeps nothing shows what it hears, and nothing else.
    if (outcome.kind === 'done') {
      void heard.put(address, { reply: outcome.reply, heardAt: Date.now() }).catch(() => {});
      return outcome;
    }
    if (outcome.problem.code !== away.code) return outcome;
    const kept = await heard.get(address).catch(() => undefined);
    return kept === undefined
      ? outcome
      : { kind: 'done', reply: kept.reply as T, oldSince: kept.heardAt };
  }

  return {
    async call<N extends Used>(name: N, given: Given<N>) {
      const { method, path } = addresses[name];
      const sent = given as Partial<Record<'params' | 'query' | 'body', Record<string, unknown>>>;
      const address = fill(path, sent.params ?? {}) + query(sent.query ?? {});
      // The daemon checks every reply against the contract on its way out.
      const ask = async () => (await request(method, address, sent.body)) as Outcome<RouteReply<N>>;
      const outcome = await ask();
      // A look closer at a curve is one of many, and its whole is kept.
      const isPart = sent.query?.from !== undefined;
      if (worthKeeping.includes(name) && !isPart) return rememberedAt(address, outcome);
      const wantsPin =
        method !== 'GET' && outcome.kind === 'problem' && afterLogIn.includes(outcome.problem.code);
      // The same once more: what was typed is not lost to a log-in that ran out.
      return wantsPin && (await logIn()) ? ask() : outcome;
    },
    document: (path) => request('GET', path, undefined),
  };
}

/** Problems that a log-in gets out of the way. */
const afterLogIn = ['BC_LOGIN_NEEDED', 'BC_ROLE_TOO_SMALL'];

/**
 * JSON has no NaN and would say null for it, which means “nothing” where a figure may be left out. As
 * text it is refused, and the daemon names the field that holds no number.
 */
const noNumberAsText = (_: string, value: unknown): unknown =>
  Number.isNaN(value) ? String(value) : value;

function fill(path: string, params: Record<string, unknown>): string {
  return path.replace(/:(\w+)/g, (_, name: string) => encodeURIComponent(String(params[name])));
}

function query(values: Record<string, unknown>): string {
  const given = Object.entries(values).filter(([, value]) => value !== undefined);
  if (given.length === 0) return '';
  return `?${given.map(([key, value]) => `${key}=${encodeURIComponent(String(value))}`).join('&')}`;
}

function isProblem(reply: unknown): reply is Problem {
  return typeof reply === 'object' && reply !== null && 'title' in reply && 'doThis' in reply;
}

/** The page says these two in the reader’s words, by their code. */
const away = unspoken('AWAY', 0);
const unreadable = (status: number) => unspoken('UNREADABLE', status);

function unspoken(code: string, status: number): Problem {
  return { type: 'about:blank', title: '', status, detail: '', code, doThis: '' };
}
