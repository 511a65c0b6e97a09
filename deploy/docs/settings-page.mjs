import { code, generated, table } from './markdown.mjs';
import { schemaWords } from './schema-words.mjs';

/**
 * Every setting with where it stands, section by section.
 *
 * @param {any} schema the settings as JSON Schema
 * @returns {{ section: string, settings: { name: string, schema: any }[] }[]}
 */
function sectionsOf(schema) {
  const plain = [];
  const sections = [];
  for (const [name, field] of Object.entries(schema.properties)) {
    if (field.properties) sections.push(...sectionOf(name, field));
    else plain.push({ name, schema: field });
  }
  return [{ section: '', settings: plain }, ...sections];
}

/**
 * @param {string} section
 * @param {any} schema
 * @returns {{ section: string, settings: { name: string, schema: any }[] }[]}
 */
function sectionOf(section, schema) {
  const entries = Object.entries(schema.properties).map(([name, field]) => ({
    name,
    schema: field,
  }));
  const inner = (/** @type {any} */ field) => field.schema.properties !== undefined;
  return [
    { section, settings: entries.filter((entry) => !inner(entry)) },
    ...entries
      .filter(inner)
      .flatMap((entry) => sectionOf(`${section}.${entry.name}`, entry.schema)),
  ];
}

/** @param {any} schema */
const shownDefault = ({ default: value }) =>
  value === undefined || value === null ? 'left out' : code(tomlValue(value));

/**
 * @param {unknown} value
 * @returns {string}
 */
function tomlValue(value) {
  if (Array.isArray(value)) return `[${value.map(tomlValue).join(', ')}]`;
  if (typeof value === 'object' && value !== null) {
    const pairs = Object.entries(value).map(([key, one]) => `${key} = ${tomlValue(one)}`);
    return pairs.length === 0 ? '{}' : `{ ${pairs.join(', ')} }`;
  }
  return JSON.stringify(value);
}

/**
 * The page of all settings.
 *
 * @param {any} schema the settings as JSON Schema, as they may be given
 */
export function settingsPage(schema) {
  const parts = sectionsOf(schema)
    .filter(({ settings }) => settings.length > 0)
    .map(({ section, settings }) => {
      const rows = settings.map(({ name, schema: field }) => [
        code(name),
        words(field),
        shownDefault(field),
        field.live ? 'at once' : 'next start',
        field.onPage ? 'yes' : '',
        field.description ?? '',
      ]);
      const title = section === '' ? '## At the top of the file' : `## \`[${section}]\``;
      return `${title}\n\n${table(['setting', 'takes', 'default', 'holds', 'page', 'what it does'], rows)}`;
    });
  return `${generated}

# Settings

One file in TOML, given by \`--config\` or \`BOARDCURE_CONFIG\`; an installed daemon reads
\`/etc/boardcure/boardcure.toml\`. What is left out has its default, and every default works. Flags win over
environment variables, and these over the file. [boardcure.toml](boardcure.toml) is an example that holds
every setting at its default.

What concerns the work can also be chosen on the settings page (column _page_), by whoever may do everything, or
with \`PATCH /api/v1/settings\`. That is kept in \`settings-chosen.toml\` in the data folder and goes before the
file, but after environment and flags. What lets somebody in, is secret, names a file or an address, guards the
computer or throws something away stays in the file. A choice that no longer fits, or a damaged file of choices,
never keeps the daemon from starting: the file’s value or the default holds, and page, log and
\`boardcure doctor\` name it. Like the settings file it is in no backup of the database: copy both.

Settings that do not fit stop the start: every fault is told at once, with the line of the file, or the flag
or variable it came from. \`boardcure doctor\` tells the same and starts nothing.

\`systemctl reload boardcure\` (the signal SIGHUP) has the file read anew. What _holds at once_ changes then; the
rest waits for the next start, which the log and \`GET /healthz\` (\`restartFor\`) say. A file that does not fit
changes nothing.

${parts.join('\n\n')}
`;
}

/** @param {any} field */
const words = (field) =>
  // That nothing may be said is told by the default.
  schemaWords(field).replace(' or nothing (`null`)', '');

/**
 * A settings file that holds every setting at its default, all of them commented out.
 *
 * @param {any} schema the settings as JSON Schema, as they may be given
 */
export function settingsExample(schema) {
  const parts = sectionsOf(schema)
    .filter(({ settings }) => settings.length > 0)
    .map(({ section, settings }) => {
      const lines = settings.flatMap(({ name, schema: field }) => [
        ...wrapped(`${field.description ?? ''} (${words(field).replaceAll('`', '')})`),
        `# ${name} = ${field.default === undefined || field.default === null ? '…' : tomlValue(field.default)}`,
        '',
      ]);
      return [...(section === '' ? [] : [`[${section}]`]), ...lines].join('\n');
    });
  return `# Settings of boardcure, each at its default. Made by \`npm run docs\`; deploy/settings.md tells more.

${parts.join('\n')}`;
}

const WIDTH = 98;

/** @param {string} text */
function wrapped(text) {
  const lines = [];
  let line = '##';
  for (const word of text.split(' ')) {
    if (line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = '##';
    }
    line += ` ${word}`;
  }
  return [...lines, line];
}
