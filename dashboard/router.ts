import { type FirstRunStep, firstRunSteps } from './first-run/steps.ts';

/** The pages, as the part of the address after `#` names them. */
export type Page =
  | { readonly kind: 'wall' }
  | { readonly kind: 'batch'; readonly id: string }
  | { readonly kind: 'report'; readonly id: string }
  | { readonly kind: 'coating'; readonly id: string }
  | { readonly kind: 'round' }
  | { readonly kind: 'season' }
  /** `placeId`: null for whichever place has readings. */
  | { readonly kind: 'air'; readonly placeId: string | null; readonly given: URLSearchParams }
  | { readonly kind: 'ahead' }
  | { readonly kind: 'brush' }
  | { readonly kind: 'pot' }
  | { readonly kind: 'lock-up' }
  | { readonly kind: 'notices' }
  | { readonly kind: 'print'; readonly sheet: PrintSheet; readonly given: URLSearchParams }
  | { readonly kind: 'setup' }
  /** Without a step: where it was left. */
  | { readonly kind: 'first-run'; readonly step: FirstRunStep | null }
  | { readonly kind: 'records'; readonly given: URLSearchParams }
  | { readonly kind: 'settings'; readonly section: string | null }
  /** `from`: a topic that a rule is to be written for. */
  | { readonly kind: 'topics'; readonly from: string | null }
  | { readonly kind: 'access' }
  | { readonly kind: 'more' }
  | { readonly kind: 'waiting' }
  | { readonly kind: 'api' }
  | { readonly kind: 'cautions' }
  | { readonly kind: 'unknown'; readonly path: string };

/**
 * Reads the page from the address.
 *
 * @param hash - `location.hash`, with or without its `#`
 */
export function pageOf(hash: string): Page {
  const path = hash.replace(/^#/, '').replace(/\/+$/, '');
  if (path === '') return { kind: 'wall' };
  const batch = /^\/batch\/([^/]+)$/.exec(path);
  if (batch?.[1] !== undefined) return { kind: 'batch', id: plainText(batch[1]) };
  const report = /^\/batch\/([^/]+)\/report$/.exec(path);
  if (report?.[1] !== undefined) return { kind: 'report', id: plainText(report[1]) };
  const coating = /^\/batch\/([^/]+)\/coating$/.exec(path);
  if (coating?.[1] !== undefined) return { kind: 'coating', id: plainText(coating[1]) };
  if (path === '/round') return { kind: 'round' };
  if (path === '/season') return { kind: 'season' };
  const print = /^\/print\/(strip|label|rack|door)(?:\?(.*))?$/.exec(path);
  if (print?.[1] !== undefined) {
    const given = new URLSearchParams(print[2] ?? '');
    return { kind: 'print', sheet: print[1] as PrintSheet, given };
  }
  for (const kind of ['brush', 'pot', 'lock-up', 'notices'] as const) {
    if (path === `/${kind}`) return { kind };
  }
  const air = /^\/air(?:\/([^/?]+))?(?:\?(.*))?$/.exec(path);
  if (air) {
    const placeId = air[1] === undefined ? null : plainText(air[1]);
    return { kind: 'air', placeId, given: new URLSearchParams(air[2] ?? '') };
  }
  if (path === '/ahead') return { kind: 'ahead' };
  if (path === '/setup') return { kind: 'setup' };
  const run = /^\/first-run(?:\/([^/]+))?$/.exec(path);
  const step = firstRunSteps.find((one) => one === run?.[1]);
  if (run && (step || run[1] === undefined)) return { kind: 'first-run', step: step ?? null };
  const records = /^\/records(?:\?(.*))?$/.exec(path);
  if (records) return { kind: 'records', given: new URLSearchParams(records[1] ?? '') };
  const section = /^\/settings(?:\/([^/]+))?$/.exec(path);
  if (section) {
    return { kind: 'settings', section: section[1] ? plainText(section[1]) : null };
  }
  const topic = /^\/topics(?:\/([^/]+))?$/.exec(path);
  if (topic) return { kind: 'topics', from: topic[1] ? plainText(topic[1]) : null };
  if (path === '/access') return { kind: 'access' };
  if (path === '/more') return { kind: 'more' };
  if (path === '/waiting') return { kind: 'waiting' };
  if (path === '/api') return { kind: 'api' };
  if (path === '/cautions') return { kind: 'cautions' };
  return { kind: 'unknown', path };
}

/** Names what is one page to a reader: another filter or section of a list is no other page. */
export function pageKey(page: Page): string {
  switch (page.kind) {
    case 'batch':
    case 'report':
    case 'coating':
      return `${page.kind} ${page.id}`;
    case 'first-run':
      return `${page.kind} ${page.step ?? ''}`;
    case 'print':
      return `${page.kind} ${page.sheet}`;
    case 'topics':
      return `${page.kind} ${page.from ?? ''}`;
    case 'air':
      return `air ${page.placeId}`;
    default:
      return page.kind;
  }
}

/** The address of a place’s air over some time; what is null is left out. */
export function airAddress(
  placeId: string,
  given: Readonly<Record<string, string | null>> = {},
): string {
  const said = Object.entries(given).flatMap(([name, value]) =>
    value === null ? [] : [`${name}=${encodeURIComponent(value)}`],
  );
  const address = `#/air/${encodeURIComponent(placeId)}`;
  return said.length === 0 ? address : `${address}?${said.join('&')}`;
}

/** The address of a batch’s report. */
export function reportAddress(id: string): string {
  return `${batchAddress(id)}/report`;
}

/** The address of the page on which a batch is coated step by step. */
export function coatingAddress(id: string): string {
  return `${batchAddress(id)}/coating`;
}

/** A part of an address as it was meant; one that is escaped wrongly stands for itself. */
function plainText(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

/** What is printed to be used away from any screen. */
export type PrintSheet = 'strip' | 'label' | 'rack' | 'door';

/** The address of a sheet to print; what is undefined is left out. */
export function printAddress(
  sheet: PrintSheet,
  given: Readonly<Record<string, string | number | undefined>> = {},
): string {
  const said = Object.entries(given).flatMap(([name, value]) =>
    value === undefined ? [] : [`${name}=${encodeURIComponent(String(value))}`],
  );
  return `#/print/${sheet}${said.length === 0 ? '' : `?${said.join('&')}`}`;
}

/** The address of a batch’s page. */
export function batchAddress(id: string): string {
  return `#/batch/${encodeURIComponent(id)}`;
}

/** The address of a screen of the first run; without a step, where it was left. */
export function firstRunAddress(step?: FirstRunStep): string {
  return step === undefined ? '#/first-run' : `#/first-run/${step}`;
}

/** The address of the records that fit; what is empty is left out. */
export function recordsAddress(given: Readonly<Record<string, string>> = {}): string {
  const said = Object.entries(given).filter(([, value]) => value !== '');
  return said.length === 0 ? '#/records' : `#/records?${new URLSearchParams(said)}`;
}

/** The address of one section of the settings. */
export function settingsAddress(section: string): string {
  return `#/settings/${encodeURIComponent(section)}`;
}

/** The address of the page on which a rule for a topic is written. */
export function topicAddress(topic: string): string {
  return `#/topics/${encodeURIComponent(topic)}`;
}
