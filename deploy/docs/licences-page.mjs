import { code, generated, table } from './markdown.mjs';

/**
 * The page of the licences of all packages.
 *
 * @param {{ packages: Record<string, any> }} lock package-lock.json
 * @param {ReadonlySet<string>} shipped paths of the packages that run on a board
 */
export function licencesPage(lock, shipped) {
  const packages = Object.entries(lock.packages)
    .filter(([path]) => path !== '')
    .map(([path, { version, license }]) => ({
      name: path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length),
      version,
      licence: license ?? 'not told',
      runs: shipped.has(path),
    }))
    .sort((a, b) => compared(a.name, b.name) || compared(a.version, b.version));
  const list = (/** @type {boolean} */ runs) => {
    const rows = packages
      .filter((one) => one.runs === runs)
      .map(({ name, version, licence }) => [code(name), version, licence]);
    return table(
      ['package', 'version', 'licence'],
      [...new Map(rows.map((row) => [row.join(), row])).values()],
    );
  };
  return `${generated}

# Licences of what this is built with

Boardcure itself is under the MIT licence. The licence texts lie in the packages, and
beside the bundle in \`licences.md\`. \`npm run sbom\` writes the same as a bill of materials (CycloneDX).

## On the board

${list(true)}

Of these the dashboard’s (\`preact\`, \`@preact/signals\`, \`uplot\`) are part of its one file. The database engine
SQLite itself is in the public domain.

## Only to build and to test

${list(false)}
`;
}

/**
 * @param {string} a
 * @param {string} b
 */
const compared = (a, b) => (a < b ? -1 : a > b ? 1 : 0);
