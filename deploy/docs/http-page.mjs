import { code, generated, table } from './markdown.mjs';
import { fieldsOf, schemaWords } from './schema-words.mjs';

/**
 * @typedef {{ method: string, path: string, summary: string, role?: string, status: number,
 *   params?: any, query?: any, body?: any, reply: any }} HttpRoute schemas as JSON Schema
 */

/**
 * The page of all routes and of all errors.
 *
 * @param {HttpRoute[]} routes
 * @param {Record<string, { status: number, title: string, doThis: string }>} problems
 */
export function httpPage(routes, problems) {
  const overview = routes.map(({ method, path, summary, ...route }) => [
    `[${code(`${method} ${path}`)}](#${anchor(method, path)})`,
    whoMay(method, route.role),
    summary,
  ]);
  const details = routes.map((route) => {
    const { method, path, summary, status } = route;
    return [
      `### ${method} ${path}`,
      `${summary}. Answers ${status}.`,
      ...given('In the query', route.query),
      ...given('In the body', route.body),
      ...answered(route.reply),
    ].join('\n\n');
  });
  const errors = Object.entries(problems).map(([name, { status, title, doThis }]) => [
    code(name),
    String(status),
    title,
    doThis,
  ]);
  return `${generated}

# HTTP

JSON in and out, fields in camelCase, moments in ISO 8601 (UTC on the way out). A running daemon describes the
same at \`GET /api/v1/openapi.json\`, and shows it on its page _API_. Ids are UUIDs; whoever creates something
may bring its own \`id\`, so that what was entered without a network arrives once.

Besides the routes below there are \`GET /metrics\` ([metrics.md](metrics.md)) and \`GET /api/v1/stream\`:
server-sent events, each a line of JSON with \`kind\` \`overview\` (the whole overview, at once and after each
change) or \`batch-changed\` (with \`batchId\`).

## Routes

${table(['route', 'who may', 'what it does'], overview)}

## Errors

Every error is a problem of RFC 9457 (\`application/problem+json\`): \`type\`, \`title\`, \`status\`, \`detail\`, and
our \`code\`, \`doThis\` (what to do) and, where a field is wrong, \`pointer\` and \`errors\` with one entry a field.

${table(['code', 'status', 'what was wrong', 'what to do'], errors)}

## Each route

${details.join('\n\n')}
`;
}

/**
 * @param {string} method
 * @param {string} path
 */
const anchor = (method, path) =>
  `${method} ${path}`
    .toLowerCase()
    .replace(/[^a-z0-9 _-]/g, '')
    .replaceAll(' ', '-');

/**
 * @param {string} method
 * @param {string | undefined} role
 */
function whoMay(method, role) {
  const needed = role ?? (method === 'GET' ? 'look' : 'operate');
  const words = {
    anyone: 'anyone',
    look: 'who may look',
    operate: 'who may operate',
    own: 'the owner',
  };
  return words[/** @type {keyof typeof words} */ (needed)] ?? needed;
}

/**
 * @param {string} where
 * @param {any} schema
 */
function given(where, schema) {
  if (!schema) return [];
  const rows = fieldsOf(schema).map(({ name, words, says, isNeeded }) => [
    code(name),
    words,
    isNeeded ? 'yes' : '',
    says,
  ]);
  return rows.length === 0 ? [] : [`${where}:`, table(['field', 'takes', 'needed', 'what'], rows)];
}

/** @param {any} reply */
function answered(reply) {
  const item = reply.type === 'array' ? reply.items : reply;
  const choices = item.anyOf ?? item.oneOf;
  const rows = (choices ? choices : [item]).flatMap((/** @type {any} */ one) =>
    fieldsOf(one, { depth: 2 }).map(({ name, words, says }) => [code(name), words, says]),
  );
  if (rows.length === 0) return [`The reply: ${schemaWords(reply)}.`];
  const first = reply.type === 'array' ? 'The reply is a list; each entry:' : 'The reply:';
  return [first, table(['field', 'is', 'what'], rows)];
}
