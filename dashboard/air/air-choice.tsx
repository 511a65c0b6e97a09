import { useCallback, useRef, useState } from 'preact/hooks';
import type { OverviewPlace } from '../../daemon/contract/overview.ts';
import { fromLocalField, toLocalField } from '../format/calendar.ts';
import { Choice } from '../forms/choice.tsx';
import { SelectField, TextField } from '../forms/field.tsx';
import { useFirstFault } from '../forms/use-first-fault.ts';
import { useReader } from '../reader.ts';
import { airAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import {
  type AirSpan,
  isMoment,
  lastOf,
  ownSpan,
  type SpanKind,
  spanKinds,
  spanQuery,
} from './air-span.ts';

interface AirChoiceProps {
  places: readonly OverviewPlace[];
  placeId: string;
  /** Null for what counts at the place. */
  sensor: string | null;
  span: AirSpan;
  onSensor: (sensor: string | null) => void;
  onSpan: (span: AirSpan) => void;
}

/** Which place, which sensor, over which time. */
export function AirChoice({ places, placeId, sensor, span, onSensor, onSpan }: AirChoiceProps) {
  const { api, live } = useShed();
  const { words } = useReader();
  const { air, from, to } = words.chart;
  const own = useRef<HTMLFormElement>(null);
  const [faulty, setFaulty] = useState<Readonly<Record<'from' | 'to', boolean>> | null>(null);
  useFirstFault(own, faulty);
  const { replied } = useReply(useCallback(() => api.call('listSensors', {}), [api]));
  const sensors = replied.kind === 'there' ? replied.reply : [];
  // The sensors of this place first: they are what one looks for.
  const inOrder = [...sensors].sort(
    (a, b) => Number(b.placeId === placeId) - Number(a.placeId === placeId),
  );
  const choose = (kind: SpanKind) => {
    if (kind !== 'own') return onSpan(lastOf(kind));
    const now = live.now.value;
    const { from: start } = span.timesAt(now);
    onSpan(ownSpan(start, new Date(now).toISOString()));
  };
  const submit = (event: SubmitEvent) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget as HTMLFormElement);
    const [start = '', end = ''] = [form.get('from'), form.get('to')].map((typed) =>
      fromLocalField(String(typed)),
    );
    const found = { from: !isMoment(start), to: !isMoment(end) };
    const isFaulty = found.from || found.to;
    setFaulty(isFaulty ? found : null);
    if (!isFaulty) onSpan(ownSpan(start, end));
  };
  return (
    <div class="air-choice">
      <SelectField
        label={air.place}
        name="place"
        pointer=""
        problem={null}
        value={placeId}
        onChange={(id) => {
          onSensor(null);
          location.hash = airAddress(id, spanQuery(span));
        }}
      >
        {places.map((place) => (
          <option key={place.id} value={place.id}>
            {place.name}
          </option>
        ))}
      </SelectField>
      <SelectField
        label={air.sensor}
        name="sensor"
        pointer=""
        problem={null}
        value={sensor ?? ''}
        onChange={(id) => onSensor(id === '' ? null : id)}
      >
        <option value="">{air.allSensors}</option>
        {inOrder.map(({ id, name }) => (
          <option key={id} value={id}>
            {name ?? id}
          </option>
        ))}
      </SelectField>
      <Choice
        legend={air.span}
        name="span"
        options={spanKinds.map((kind) => ({ value: kind, words: air.spans[kind] }))}
        value={span.kind}
        onChange={choose}
      />
      {span.kind === 'own' && (
        <form ref={own} class="air-own" key={span.from + span.to} noValidate onSubmit={submit}>
          <TextField
            label={from}
            name="from"
            kind="datetime-local"
            value={toLocalField(Date.parse(span.from))}
            pointer="/from"
            problem={null}
            fault={faulty?.from ? words.forms.when.incomplete : null}
          />
          <TextField
            label={to}
            name="to"
            kind="datetime-local"
            value={toLocalField(Date.parse(span.to))}
            pointer="/to"
            problem={null}
            fault={faulty?.to ? words.forms.when.incomplete : null}
          />
          <button type="submit" class="button">
            {air.show}
          </button>
        </form>
      )}
    </div>
  );
}
