/** The pages, as the part of the address after `#` names them. */
export type Page =
  | { readonly kind: 'wall' }
  | { readonly kind: 'batch'; readonly id: string }
  | { readonly kind: 'report'; readonly id: string }
  | { readonly kind: 'season' }
  | { readonly kind: 'ahead' }
  | { readonly kind: 'setup' }
  /** `from`: a topic that a rule is to be written for. */
  | { readonly kind: 'topics'; readonly from: string | null }
  | { readonly kind: 'access' }
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
  if (path === '/season') return { kind: 'season' };
  if (path === '/ahead') return { kind: 'ahead' };
  if (path === '/setup') return { kind: 'setup' };
  const topic = /^\/topics(?:\/([^/]+))?$/.exec(path);
  if (topic) return { kind: 'topics', from: topic[1] ? plainText(topic[1]) : null };
  if (path === '/access') return { kind: 'access' };
  if (path === '/api') return { kind: 'api' };
  if (path === '/cautions') return { kind: 'cautions' };
  return { kind: 'unknown', path };
}

/** The address of a batch’s report. */
export function reportAddress(id: string): string {
  return `${batchAddress(id)}/report`;
}

/** A part of an address as it was meant; one that is escaped wrongly stands for itself. */
function plainText(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

/** The address of a batch’s page. */
export function batchAddress(id: string): string {
  return `#/batch/${encodeURIComponent(id)}`;
}

/** The address of the page on which a rule for a topic is written. */
export function topicAddress(topic: string): string {
  return `#/topics/${encodeURIComponent(topic)}`;
}
