import { Counter, Gauge, Histogram, type OpenMetricsContentType, Registry } from 'prom-client';
import { type Metric, type MetricName, metrics } from './contract/metric.ts';

/** A figure, or several told apart by the value of the one label. */
export type Figure = number | Readonly<Record<string, number>>;

/** How a figure is looked up when somebody asks; null where there is none just now. */
export type Readings = Partial<Record<MetricName, () => Figure | null>>;

/** What counts and times as things happen. */
export interface SiteMetrics {
  /** Says where the figures that are kept elsewhere are looked up. */
  lookUp(readings: Readings): void;
  refused(reason: string, count?: number): void;
  responded(status: number): void;
  hoursReckoned(count: number): void;
  /** Times a commit, whatever becomes of it. */
  timed<T>(readings: number, commit: () => Promise<T>): Promise<T>;
  contentType: string;
  /** All figures as OpenMetrics text. */
  text(): Promise<string>;
}

/**
 * Counts, times and tells in OpenMetrics. The figures are looked up only when somebody asks.
 */
export function siteMetrics(): SiteMetrics {
  let look: Readings = {};
  const registry = new Registry<OpenMetricsContentType>();
  registry.setContentType(Registry.OPENMETRICS_CONTENT_TYPE);
  const sums: Partial<Record<MetricName, Map<string, number>>> = {};
  const add = (name: MetricName, label: string, count: number) => {
    sums[name] ??= new Map();
    sums[name].set(label, (sums[name].get(label) ?? 0) + count);
  };
  const histograms = new Map<MetricName, Histogram<string>>();

  for (const name of Object.keys(metrics) as MetricName[]) {
    const { name: full, help, kind, labels = [], edges = [] }: Metric = metrics[name];
    const config = { name: full, help, labelNames: [...labels], registers: [registry] };
    const own = () => {
      const lookUp = look[name];
      return lookUp ? lookUp() : counts(sums[name], labels);
    };
    if (kind === 'histogram') {
      histograms.set(name, new Histogram({ ...config, buckets: [...edges] }));
    } else if (kind === 'counter') {
      new Counter({
        ...config,
        collect() {
          const figure = own();
          this.reset();
          if (figure === null && labels.length === 0) this.remove();
          for (const { of, value } of figures(figure, labels)) this.inc(of, value);
        },
      });
    } else {
      new Gauge({
        ...config,
        collect() {
          const figure = own();
          this.reset();
          // A reset leaves a 0 where there are no labels.
          if (figure === null && labels.length === 0) this.remove();
          for (const { of, value } of figures(figure, labels)) this.set(of, value);
        },
      });
    }
  }

  return {
    lookUp(readings) {
      look = readings;
    },
    refused: (reason, count = 1) => add('refused', reason, count),
    responded: (status) => add('responses', String(status), 1),
    hoursReckoned: (count) => add('ledgerHours', '', count),
    async timed(readings, commit) {
      histograms.get('commitReadings')?.observe(readings);
      const stop = histograms.get('commitSeconds')?.startTimer();
      try {
        return await commit();
      } finally {
        stop?.();
      }
    },
    contentType: registry.contentType,
    text: () => registry.metrics(),
  };
}

/** What was counted as it happened; a count without labels begins at 0. */
function counts(sum: Map<string, number> | undefined, labels: readonly string[]): Figure | null {
  if (labels.length > 0) return sum ? Object.fromEntries(sum) : null;
  return sum?.get('') ?? 0;
}

/** The series of a figure: its labels, and its value. */
function figures(
  figure: Figure | null | undefined,
  labels: readonly string[],
): { of: Record<string, string>; value: number }[] {
  if (figure === null || figure === undefined) return [];
  if (typeof figure === 'number') return [{ of: {}, value: figure }];
  const [label] = labels;
  return Object.entries(figure).map(([key, value]) => ({
    // Several labels share one key, split where the values cannot hold the mark.
    of:
      labels.length > 1
        ? Object.fromEntries(labels.map((name, index) => [name, key.split('\n')[index] ?? '']))
        : label === undefined
          ? {}
          : { [label]: key },
    value,
  }));
}
