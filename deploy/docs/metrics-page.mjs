import { code, generated, table } from './markdown.mjs';

/**
 * The page of all figures.
 *
 * @param {{ name: string, kind: string, help: string, labels?: readonly string[] }[]} metrics
 */
export function metricsPage(metrics) {
  const rows = metrics.map(({ name, kind, help, labels = [] }) => [
    code(name),
    kind,
    labels.map(code).join(', '),
    help,
  ]);
  return `${generated}

# Figures for a collector

\`GET /metrics\` answers in OpenMetrics 1.0 text, which the usual collectors read. Nothing is sent anywhere by
itself. Counters count from the start of the daemon. Figures of a broker that is not ours are left out.

${table(['figure', 'kind', 'split by', 'what it tells'], rows)}

Worth an alarm in a shed that nobody visits daily: \`boardcure_disk_full\` or \`boardcure_doubts\` above 0,
\`boardcure_broker_connected\` at 0, and \`boardcure_last_commit_timestamp_seconds\` an hour old.
`;
}
