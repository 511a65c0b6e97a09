import type { CalibrationHow } from '../../daemon/contract/calibration.ts';
import type { Problem } from '../../daemon/contract/problem.ts';
import type { Quantity } from '../../daemon/contract/quantity.ts';
import { toLocalField } from '../format/calendar.ts';
import { SelectField, TextField } from '../forms/field.tsx';
import { quantityWords } from '../words/thing-words.ts';
import { saltWords } from '../words/trust-words.ts';
import { type CalibrationKind, OHMS_TYPED } from './calibration-how.ts';

interface FiguresProps {
  kind: CalibrationKind;
  quantity: Quantity;
  /** What was typed before, where a calibration is corrected. */
  before: CalibrationHow | null;
  problem: Problem | null;
}

/** The fields of one way of calibrating. */
export function CalibrationFigures({ kind, quantity, before, problem }: FiguresProps) {
  const { unit } = quantityWords[quantity];
  const was = before?.kind === kind ? before : null;
  const figure = (
    label: string,
    name: string,
    pointer: string,
    value: number | undefined,
    ofUnit = unit,
  ) => (
    <TextField
      label={label}
      name={name}
      kind="number"
      unit={ofUnit}
      pointer={pointer}
      problem={problem}
      {...(value === undefined ? {} : { value: typed(value) })}
    />
  );
  const salt = (i: number, label: string, isOptional: boolean) => {
    const point = was?.kind === 'salts' ? was.points[i] : undefined;
    const lower = label.toLowerCase();
    return (
      <>
        <SelectField
          label={label}
          name={`salt${i}`}
          pointer={`/how/points/${i}/salt`}
          problem={problem}
          {...(point === undefined ? {} : { value: point.salt })}
        >
          {isOptional && <option value="">none</option>}
          {Object.entries(saltWords).map(([value, words]) => (
            <option key={value} value={value}>
              {words}
            </option>
          ))}
        </SelectField>
        {figure(
          `Temperature over the ${lower}`,
          `temp${i}`,
          `/how/points/${i}/tempC`,
          point?.tempC,
          '°C',
        )}
        {figure(`Shown over the ${lower}`, `shown${i}`, `/how/points/${i}/shown`, point?.shown)}
      </>
    );
  };
  switch (kind) {
    case 'hand-meter': {
      const hand = was?.kind === 'hand-meter' ? was : null;
      return (
        <>
          {figure('The hand meter shows', 'actual', '/how/actual', hand?.actual)}
          {hand !== null && figure('The sensor sent then', 'shown', '/how/shown', hand.shown)}
          <TextField
            label="Read when"
            name="measuredAt"
            kind="datetime-local"
            pointer="/how/measuredAt"
            problem={problem}
            hint={
              hand === null
                ? 'Left empty: now. Hold it beside the sensor until both stand still. What the sensor sent is looked up.'
                : 'For another time empty the field above: what the sensor sent then is looked up.'
            }
            {...(hand?.measuredAt === undefined
              ? {}
              : { value: toLocalField(Date.parse(hand.measuredAt)) })}
          />
        </>
      );
    }
    case 'offset':
      return figure(
        'Add to what it sends',
        'add',
        '/how/add',
        was?.kind === 'offset' ? was.add : undefined,
      );
    case 'two-point':
      return (
        <>
          {[0, 1].map((i) => {
            const point = was?.kind === 'two-point' ? was.points[i] : undefined;
            return (
              <div key={i} class="form-row">
                {figure(
                  `It shows, point ${i + 1}`,
                  `shown${i}`,
                  `/how/points/${i}/shown`,
                  point?.shown,
                )}
                {figure(
                  `So it is, point ${i + 1}`,
                  `actual${i}`,
                  `/how/points/${i}/actual`,
                  point?.actual,
                )}
              </div>
            );
          })}
        </>
      );
    case 'salts':
      return (
        <>
          {salt(0, 'First salt', false)}
          {salt(1, 'Second salt', true)}
          <p class="field-hint">
            A damp paste of salt in a closed jar, half a day at steady temperature. Keep salts away
            from eyes and food, and from children.
          </p>
        </>
      );
    case 'ice-point':
      return (
        <>
          {figure(
            'It shows in ice water',
            'shown',
            '/how/shown',
            was?.kind === 'ice-point' ? was.shown : undefined,
          )}
          <p class="field-hint">
            Crushed ice with a little water, stirred; only for a probe that may get wet.
          </p>
        </>
      );
    case 'test-resistor': {
      const test = was?.kind === 'test-resistor' ? was : null;
      return (
        <>
          {figure('The resistor has', 'ohms', '/how/ohms', inMegohms(test?.ohms), 'MΩ')}
          {figure(
            'It shows with the resistor between its leads',
            'shown',
            '/how/shown',
            inMegohms(test?.shown),
            'MΩ',
          )}
        </>
      );
    }
  }
}

const inMegohms = (ohms: number | undefined) =>
  ohms === undefined ? undefined : ohms / OHMS_TYPED;

/** As it is typed again: no more digits than a double tells apart in a sum. */
const typed = (value: number) => String(Number(value.toPrecision(12)));
