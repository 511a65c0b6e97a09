import { useEffect, useRef } from 'preact/hooks';
import type { Coat } from '../../daemon/contract/coat.ts';
import type { BatchChart } from '../../daemon/contract/series.ts';
import { type DrawnChart, drawAir, drawCure } from '../chart.ts';
import { degreeHoursFigure, humidity, temperature } from '../format/figures.ts';
import { useShed } from '../shed-context.ts';
import { jobs, jobsInOrder } from '../words/job-words.ts';
import { chartRows } from './chart-rows.ts';

interface ChartPanelProps {
  /** Null while the curves could not be read. */
  chart: BatchChart | null;
  coat: Coat;
}

const TABLE_ROWS = 25;

/** The air over the boards and the sum they gathered, drawn and as a table. */
export function ChartPanel({ chart, coat }: ChartPanelProps) {
  const air = useRef<HTMLDivElement>(null);
  const cure = useRef<HTMLDivElement>(null);
  const drawn = useRef<{ air: DrawnChart; cure: DrawnChart } | null>(null);
  const there = chart !== null && chart.at.length > 1;

  useEffect(() => {
    if (!there || air.current === null || cure.current === null) return;
    const charts = { air: drawAir(air.current), cure: drawCure(cure.current) };
    drawn.current = charts;
    return () => {
      drawn.current = null;
      charts.air.close();
      charts.cure.close();
    };
  }, [there]);

  useEffect(() => {
    if (chart === null) return;
    drawn.current?.air.show([chart.at, chart.tempC, chart.rhPercent], []);
    drawn.current?.cure.show(
      [chart.at, chart.degreeHours],
      jobsInOrder.map((gate) => ({
        name: jobs[gate].noun,
        ...coat.gates[gate].requiredDegreeHours,
      })),
    );
  }, [chart, coat]);

  return (
    <section class="charts" aria-labelledby="charts-title">
      <h2 id="charts-title">Since the last board of this coat</h2>
      {there ? (
        <>
          <h3 class="chart-title">
            <span class="key key-temp">Temperature, °C</span>
            <span class="key key-damp">Humidity, %</span>
          </h3>
          <div class="chart" ref={air} aria-hidden="true" />
          <h3 class="chart-title">
            <span class="key key-sum">Degree-hours, °C·h</span>
            <span class="key key-need">what a job needs, early to late</span>
          </h3>
          <div class="chart" ref={cure} aria-hidden="true" />
          <p class="footnote">Drag over a stretch to see it larger; double-tap to see all again.</p>
          <ChartTable chart={chart} />
        </>
      ) : (
        <p class="quiet">No readings yet for this coat, so there is nothing to draw.</p>
      )}
    </section>
  );
}

function ChartTable({ chart }: { chart: BatchChart }) {
  const { calendar } = useShed();
  return (
    <details class="more">
      <summary>The same as a table</summary>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">When</th>
            <th scope="col">Temperature</th>
            <th scope="col">Humidity</th>
            <th scope="col">Sum</th>
          </tr>
        </thead>
        <tbody>
          {chartRows(chart, TABLE_ROWS).map((row) => (
            <tr key={row.at}>
              <th scope="row">{calendar.exact(row.at * 1000)}</th>
              <td>{temperature(row.tempC)}</td>
              <td>{humidity(row.rhPercent)}</td>
              <td>{degreeHoursFigure(row.degreeHours)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
