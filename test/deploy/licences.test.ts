import { describe, expect, it } from 'vitest';
// @ts-expect-error plain scripts have no types
import { readAudit } from '../../deploy/lint/audit.mjs';
// @ts-expect-error plain scripts have no types
import { isAllowed, licenceFaults } from '../../deploy/lint/licences.mjs';

describe('a licence', () => {
  it.each([
    'MIT',
    '(MIT OR WTFPL)',
    'GPL-3.0-only OR MIT',
    'Apache-2.0 AND MIT',
    '(BSD-2-Clause OR MIT OR Apache-2.0)',
    'GPL-3.0-only AND MIT OR ISC',
  ])('%s fits', (licence) => expect(isAllowed(licence)).toBe(true));

  it.each([
    'GPL-3.0-only',
    'MIT AND GPL-3.0-only',
    '(MIT OR ISC) AND AGPL-3.0-only',
    'UNLICENSED',
    'SEE LICENSE IN LICENSE.txt',
    'MIT OR',
    '(MIT',
    'MIT)',
    '',
  ])('%s does not', (licence) => expect(isAllowed(licence)).toBe(false));

  it('that does not fit is found among those that do, and a missing one is looked for in the package', () => {
    const packages = {
      '': {},
      'node_modules/good': { license: 'MIT' },
      'node_modules/@scope/bad': { license: 'GPL-3.0-only' },
      'node_modules/a/node_modules/silent': {},
      'node_modules/told': {},
    };
    const own = (path: string) => (path.endsWith('told') ? 'ISC' : undefined);
    expect(licenceFaults(packages, own)).toEqual([
      '@scope/bad has the licence GPL-3.0-only, which is not on our list.',
      'silent tells no licence.',
    ]);
  });
});

describe('npm audit', () => {
  const report = (vulnerabilities: object) =>
    JSON.stringify({ auditReportVersion: 2, vulnerabilities, metadata: { vulnerabilities: {} } });

  it('finds what is high or critical', () => {
    const told = report({
      a: { severity: 'high' },
      b: { severity: 'critical' },
      c: { severity: 'moderate' },
    });
    expect(readAudit(told)).toEqual({ kind: 'asked', holes: ['a: high', 'b: critical'] });
    expect(readAudit(report({}))).toEqual({ kind: 'asked', holes: [] });
  });

  it.each([
    '',
    'not JSON',
    '{"message":"405 from https://example.test/x","statusCode":405}',
    'null',
  ])('that could not be asked is not taken for clean: %s', (output) => {
    const audit = readAudit(output);
    expect(audit.kind).toBe('not-asked');
    expect(audit.because).not.toContain('http');
  });
});
