import type { CalibrationHow } from '../../daemon/contract/calibration.ts';
import type { Problem } from '../../daemon/contract/problem.ts';
import type { Quantity } from '../../daemon/contract/quantity.ts';
import { toLocalField } from '../format/calendar.ts';
import { isTemperature, unitOfQuantity } from '../format/reading.ts';
import type { Measure } from '../format/units.ts';
import { SelectField, TextField } from '../forms/field.tsx';
import { MeasureField } from '../forms/measure-field.tsx';
import { useReader } from '../reader.ts';
import type { Words } from '../words/words.ts';
import { type CalibrationKind, OHMS_TYPED } from './calibration-how.ts';

interface FiguresProps {
  kind: CalibrationKind;
  quantity: Quantity;
  /** What was typed before, where a calibration is corrected. */
  before: CalibrationHow | null;
  problem: Problem | null;
}

type SaltWords = Words['trust']['calibrate']['firstSalt'];

/** The fields of one way of calibrating. */
export function CalibrationFigures({ kind, quantity, before, problem }: FiguresProps) {
  const { words: all, figures } = useReader();
  const words = all.trust.calibrate;
  const was = before?.kind === kind ? before : null;
  const plain = (label: string, name: string, pointer: string, value?: number, unit = own) => (
    <TextField
      label={label}
      name={name}
      kind="number"
      unit={unit}
      pointer={pointer}
      problem={problem}
      {...(value === undefined ? {} : { value: typed(value) })}
    />
  );
  const measure = (
    what: Measure,
    label: string,
    name: string,
    pointer: string,
    value: number | undefined,
  ) => (
    <MeasureField
      label={label}
      name={name}
      measure={what}
      pointer={pointer}
      problem={problem}
      {...(value === undefined ? {} : { value: typed(value) })}
    />
  );
  const own = unitOfQuantity(quantity, { figures });
  const figure = (label: string, name: string, pointer: string, value: number | undefined) =>
    isTemperature(quantity)
      ? measure('tempC', label, name, pointer, value)
      : plain(label, name, pointer, value);
  const salt = (i: number, said: SaltWords, isOptional: boolean) => {
    const point = was?.kind === 'salts' ? was.points[i] : undefined;
    return (
      <>
        <SelectField
          label={said.label}
          name={`salt${i}`}
          pointer={`/how/points/${i}/salt`}
          problem={problem}
          {...(point === undefined ? {} : { value: point.salt })}
        >
          {isOptional && <option value="">{words.noSalt}</option>}
          {Object.entries(words.salts).map(([value, name]) => (
            <option key={value} value={value}>
              {name}
            </option>
          ))}
        </SelectField>
        {measure('tempC', said.temperature, `temp${i}`, `/how/points/${i}/tempC`, point?.tempC)}
        {figure(said.shown, `shown${i}`, `/how/points/${i}/shown`, point?.shown)}
      </>
    );
  };
  switch (kind) {
    case 'hand-meter': {
      const hand = was?.kind === 'hand-meter' ? was : null;
      return (
        <>
          {figure(words.handMeterShows, 'actual', '/how/actual', hand?.actual)}
          {hand !== null && figure(words.sensorSent, 'shown', '/how/shown', hand.shown)}
          <TextField
            label={words.readWhen}
            name="measuredAt"
            kind="datetime-local"
            pointer="/how/measuredAt"
            problem={problem}
            hint={hand === null ? words.readWhenHint : words.readWhenHintCorrected}
            {...(hand?.measuredAt === undefined
              ? {}
              : { value: toLocalField(Date.parse(hand.measuredAt)) })}
          />
        </>
      );
    }
    case 'offset': {
      const add = was?.kind === 'offset' ? was.add : undefined;
      return isTemperature(quantity)
        ? measure('differenceK', words.add, 'add', '/how/add', add)
        : plain(words.add, 'add', '/how/add', add);
    }
    case 'two-point':
      return (
        <>
          {[0, 1].map((i) => {
            const point = was?.kind === 'two-point' ? was.points[i] : undefined;
            return (
              <div key={i} class="form-row">
                {figure(
                  words.pointShown(figures.number(i + 1)),
                  `shown${i}`,
                  `/how/points/${i}/shown`,
                  point?.shown,
                )}
                {figure(
                  words.pointActual(figures.number(i + 1)),
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
          {salt(0, words.firstSalt, false)}
          {salt(1, words.secondSalt, true)}
          <p class="field-hint">{words.saltsHint}</p>
        </>
      );
    case 'ice-point':
      return (
        <>
          {figure(
            words.iceShown,
            'shown',
            '/how/shown',
            was?.kind === 'ice-point' ? was.shown : undefined,
          )}
          <p class="field-hint">{words.iceHint}</p>
        </>
      );
    case 'test-resistor': {
      const test = was?.kind === 'test-resistor' ? was : null;
      return (
        <>
          {plain(words.resistor, 'ohms', '/how/ohms', inMegohms(test?.ohms), 'MΩ')}
          {plain(words.resistorShown, 'shown', '/how/shown', inMegohms(test?.shown), 'MΩ')}
        </>
      );
    }
  }
}

const inMegohms = (ohms: number | undefined) =>
  ohms === undefined ? undefined : ohms / OHMS_TYPED;

/** As it is typed again: no more digits than a double tells apart in a sum. */
const typed = (value: number) => String(Number(value.toPrecision(12)));
