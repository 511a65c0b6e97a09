import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { type Metric, metrics } from '../../daemon/contract/metric.ts';
import { siteMetrics } from '../../daemon/metrics.ts';
import { siteFigures } from '../../daemon/site-metrics.ts';
import { needs } from '../house/needs.ts';

/**
 * What the reference parser makes of a text. **Source:** the strict OpenMetrics parser of the
 * Prometheus client library for Python, Debian package python3-prometheus-client.
 */
const PARSE = `
import json, sys
from prometheus_client.openmetrics.parser import text_string_to_metric_families as parse
print(json.dumps([{ 'name': f.name, 'type': f.type, 'help': f.documentation,
  'samples': [[s.name, s.labels, s.value] for s in f.samples] } for f in parse(sys.stdin.read())]))`;

interface Family {
  name: string;
  type: string;
  help: string;
  samples: [name: string, labels: Record<string, string>, value: number][];
}

const parse = (text: string): Family[] =>
  JSON.parse(
    // Debian's own, which knows Debian's libraries.
    execFileSync('/usr/bin/python3', ['-c', PARSE], { input: text, encoding: 'utf8' }),
  );

/** A site whose every figure is known. */
async function told(): Promise<string> {
  const counted = siteMetrics();
  counted.lookUp({
    build: () => ({ '0.1.0\n20.0.0': 1 }),
    readings: () => 41,
    cutOff: () => ({ 'too "many"\\': 2 }),
    connections: () => null,
    databaseBytes: () => ({ file: 4096, log: 0 }),
  });
  counted.refused('not-a-number');
  counted.refused('not-a-number', 2);
  counted.responded(200);
  await counted.timed(3, () => Promise.resolve());
  await expect(counted.timed(9, () => Promise.reject(new Error('full')))).rejects.toThrow('full');
  return counted.text();
}

needs('openmetrics')('GET /metrics, as the reference parser reads it', () => {
  it('has every figure of the list under its name, kind and words', async () => {
    const families = parse(await told());
    const wanted = Object.values<Metric>(metrics).map(({ name, kind, help }) => ({
      name: name.replace(/_total$/, ''),
      type: kind,
      help,
    }));
    expect(families.map(({ name, type, help }) => ({ name, type, help }))).toEqual(wanted);
  });

  it('tells what was looked up, and leaves out what there is not', async () => {
    const families = new Map(parse(await told()).map((family) => [family.name, family]));
    const samples = (name: string) => families.get(name)?.samples;
    expect(samples('boardcure_build_info')).toEqual([
      ['boardcure_build_info', { version: '0.1.0', node: '20.0.0' }, 1],
    ]);
    expect(samples('boardcure_readings')).toEqual([['boardcure_readings_total', {}, 41]]);
    expect(samples('boardcure_broker_cut_off')).toEqual([
      ['boardcure_broker_cut_off_total', { reason: 'too "many"\\' }, 2],
    ]);
    expect(samples('boardcure_broker_connections')).toEqual([]);
    expect(samples('boardcure_database_bytes')).toEqual([
      ['boardcure_database_bytes', { part: 'file' }, 4096],
      ['boardcure_database_bytes', { part: 'log' }, 0],
    ]);
  });

  it('counts what happens, and times commits that fail as well', async () => {
    const families = new Map(parse(await told()).map((family) => [family.name, family]));
    const value = (family: string, sample: string) =>
      families.get(family)?.samples.find(([name]) => name === sample)?.[2];
    expect(families.get('boardcure_messages_refused')?.samples).toEqual([
      ['boardcure_messages_refused_total', { reason: 'not-a-number' }, 3],
    ]);
    expect(value('boardcure_ledger_hours_reckoned', 'boardcure_ledger_hours_reckoned_total')).toBe(
      0,
    );
    expect(
      value('boardcure_commit_duration_seconds', 'boardcure_commit_duration_seconds_count'),
    ).toBe(2);
    expect(value('boardcure_commit_readings', 'boardcure_commit_readings_sum')).toBe(12);
  });
});

describe('while the data folder is away', () => {
  it('leaves out the room on its disk and the size of the database, and tells the rest', async () => {
    const counted = siteMetrics();
    const folder = fileURLToPath(new URL('./moved-away', import.meta.url));
    const figures = siteFigures({
      ...({} as Parameters<typeof siteFigures>[0]),
      ...{ folder, file: `${folder}/boardcure.db`, lastCommitAt: () => 5000 },
    });
    const wanted = ['freeBytes', 'lastCommit', 'databaseBytes'];
    const look = Object.entries(figures.look).filter(([name]) => wanted.includes(name));
    counted.lookUp(Object.fromEntries(look));
    const text = await counted.text();
    figures.close();
    expect(text).toContain('# TYPE boardcure_disk_free_bytes gauge');
    expect(text).not.toMatch(/^boardcure_disk_free_bytes/m);
    expect(text).toMatch(/^boardcure_last_commit\S* 5$/m);
    expect(text).not.toMatch(/^boardcure_database_bytes/m);
  });
});

describe('the list of figures', () => {
  it('names units as OpenMetrics asks for, and each name once', () => {
    const all = Object.values<Metric>(metrics);
    expect(new Set(all.map(({ name }) => name)).size).toBe(all.length);
    for (const { name, kind, edges = [] } of all) {
      expect(name).toMatch(/^(boardcure|process)(_[a-z]+)+$/);
      expect(name.endsWith('_total')).toBe(kind === 'counter');
      expect([...edges].sort((a, b) => a - b)).toEqual(edges);
    }
  });
});
