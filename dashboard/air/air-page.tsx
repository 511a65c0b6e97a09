import { useEffect, useMemo, useState } from 'preact/hooks';
import { ChartBlock } from '../chart/chart-block.tsx';
import type { CurveSource } from '../chart/use-curves.ts';
import { useReader } from '../reader.ts';
import { airAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';
import { AirChoice } from './air-choice.tsx';
import { type AirSpan, spanOf, spanQuery } from './air-span.ts';

interface AirPageProps {
  placeId: string | null;
  given: URLSearchParams;
}

/** The air of a place, or what one sensor measured, over any time. */
export function AirPage({ placeId, given }: AirPageProps) {
  const { api, live } = useShed();
  const { air } = useReader().words.chart;
  const overview = live.overview.value;
  const places = overview?.places ?? [];
  const read = places.find((place) => place.air.at !== null) ?? places[0];
  const place = places.find(({ id }) => id === placeId) ?? read ?? null;
  const [span, setSpan] = useState<AirSpan>(() => spanOf(given));
  const [sensor, setSensor] = useState<string | null>(given.get('sensor'));
  const shownId = place?.id ?? null;

  useEffect(() => {
    if (shownId === null) return;
    // The page can be kept as a bookmark, and going back leads to where one came from.
    history.replaceState(null, '', airAddress(shownId, { ...spanQuery(span), sensor }));
  }, [shownId, span, sensor]);

  const now = live.now;
  const source = useMemo<CurveSource>(
    () => ({
      curves: (asked) => {
        const { from, to } = span.timesAt(now.value);
        const query = { from, ...(to === null ? {} : { to }), ...asked };
        return sensor === null
          ? api.call('placeCurves', { params: { id: shownId ?? '' }, query })
          : api.call('sensorCurves', { params: { id: sensor }, query });
      },
      changes:
        sensor === null
          ? (asked) => api.call('airChanges', { params: { id: shownId ?? '' }, query: asked })
          : null,
    }),
    [api, now, shownId, sensor, span],
  );
  if (overview === null) return <main class="page" aria-busy="true" />;
  if (place === null) {
    return (
      <main class="page">
        <h1>{air.title}</h1>
        <p class="lead">{air.noPlaces(<a href="#/setup">{air.setUp}</a>)}</p>
      </main>
    );
  }
  const title = sensor ?? place.name;
  return (
    <main class="page air-page">
      <h1>{air.titleOf(title)}</h1>
      <p class="lead">{air.lead}</p>
      <AirChoice
        places={places}
        placeId={place.id}
        sensor={sensor}
        span={span}
        onSensor={setSensor}
        onSpan={setSpan}
      />
      <ChartBlock title={title} source={source} coat={null} news={span.isOver ? null : overview} />
    </main>
  );
}
