import fc from 'fast-check';
import { gates } from '../../daemon/contract/gate.ts';
import { quantities } from '../../daemon/contract/quantity.ts';
import { roles } from '../../daemon/contract/role.ts';
import { RuleTimeFormat } from '../../daemon/contract/topic-rule.ts';

const figure = fc.double({ min: -1000, max: 100_000, noNaN: true });
const count = fc.integer({ min: 0, max: 1000 });
const moment = fc.integer({ min: 946_684_800_000, max: 4e12 });
const name = fc.constantFrom('Rack 1', '“Söder”', 'a-b');
const names = fc.array(name, { minLength: 1, maxLength: 3 });
const inner = fc.constant({ code: 'litres-of', values: { litres: 1.5, part: 'paint' } });
const inners = fc.array(inner, { minLength: 1, maxLength: 3 });
const oneOf = (values: readonly string[]) => fc.constantFrom(...values);

const each = (arbitrary: fc.Arbitrary<unknown>, all: string) =>
  Object.fromEntries(all.split(' ').map((field) => [field, arbitrary]));

/** A value of the right kind for every field that any sentence reads, by its name. */
const fields: Record<string, fc.Arbitrary<unknown>> = {
  ...each(
    figure,
    'tempC limitC marginK limitK rhPercent limitPercent othersPercent percent lowC errorK fromC toC ' +
      'worstPercent lyingM capacityM freeM neededM gramsPerM3 differenceK perHour low high colderK ' +
      'longerPercent volumeM3 nowPpm peakPpm limitPpm toTempC soonerHours brushedM2 degreeHours ' +
      'neededDegreeHours failedDegreeHours gapHours bridgedDegreeHours hotDegreeHours litres stickCm ' +
      'otherDegreeHours leastHours leastDegreeHours value difference apart gain add steadyHours ' +
      'oursMm theirsMm rainMm fromEndCm minimum maximum divisor everyMs offMs leadHours hours limitDays',
  ),
  ...each(
    count,
    'boards days measured coats coat number months untilHour capacity lying forMinutes times minutes ' +
      'grams millilitres pots reaches toFeel ready open notices freeMiB mostMiB version left more ' +
      'bytes mostBytes keptBytes record records mostRecords earlier point points most mostAge letters ' +
      'levels status readings rules parts others seconds perMinute pages sensors ours theirs mountedBoards',
  ),
  ...each(moment, 'at now earliestAt overAt stopAt finishedAt'),
  ...each(
    name,
    'site host pointer batchName placeName planName tinName sensor other text id found because field name ' +
      'word segment topic keptUnit unit asPoint asThousands pattern scale mostScale address',
  ),
  ...each(fc.boolean(), 'tomorrow today heightKnown perHourKnown limitIsLocal again'),
  ...each(names, 'names options pointers fields'),
  ...each(inner, 'what seen fault look title coatName because spot sent'),
  ...each(inners, 'faults sentences lacking differences odd'),
  gate: oneOf(gates),
  quantity: oneOf(quantities),
  facing: oneOf(['north', 'east', 'south', 'west']),
  part: oneOf(['paint', 'rawLinseedOil', 'turpentine']),
  surface: oneOf(['sawn', 'planed']),
  thing: oneOf(['place', 'batch', 'coating-plan', 'tin', 'device', 'calibration', 'topic-rule']),
  kind: oneOf(['room', 'rack', 'wall', 'outdoors']),
  within: oneOf(['room', 'rack', 'wall', 'outdoors']),
  role: oneOf(roles),
  format: oneOf(RuleTimeFormat.options),
  fieldType: oneOf(['string', 'number']),
  measures: oneOf(['voltage', 'power', 'milliohm']),
  expected: oneOf(['string', 'number', 'bigint']),
};

/** Where a name means something else in one sentence. */
const exceptions: Record<string, Record<string, fc.Arbitrary<unknown>>> = {
  'compared/no-readings': { sensors: names },
  'backup-not-made': { because: name },
  'digest-rack/hold': { because: fc.option(inner), coatName: fc.option(inner) },
  'no-batch-like-it': { field: oneOf(['lengthMm', 'widthMm', 'thicknessMm']) },
  'unlike/timber': each(oneOf(['scots-pine', 'larch']), 'ours theirs'),
  'unlike/surface': each(oneOf(['sawn', 'planed']), 'ours theirs'),
  'unlike/state': { ours: fc.constantFrom('new', null), theirs: fc.constantFrom('painted', null) },
  'broker-names-full': { names: count },
  ...Object.fromEntries(
    [
      'cbor-broken',
      'listen-failed',
      'delivery-failed',
      'mail-failed/away',
      'webhook-failed/away',
    ].map((code) => [code, { because: name }]),
  ),
  'time-beyond': { spot: fc.option(inner) },
  'unit-unfit': { spot: fc.option(inner) },
  'unit-unfit/other': { spot: fc.option(inner) },
  'webhook-failed/address': { fault: oneOf(['secrets', 'link-local']) },
  'calendar-entry/part': { part: count },
  'calendar-when': each(fc.constantFrom('2026-05-20T08:00:00Z', null), 'early likely late'),
  'compared-with': each(fc.constant('2026-05-20T08:00:00Z'), 'from to'),
};

/**
 * Values of every kind for a sentence. What it reads and no field is known for is an error: then the
 * lists above want a line.
 */
export const anyValues = (code: string): fc.Arbitrary<Record<string, unknown>> =>
  fc.record({ ...fields, ...exceptions[code] }).map(
    (values) =>
      new Proxy(values, {
        get(all, field) {
          if (typeof field === 'symbol' || field in all) return Reflect.get(all, field);
          throw new Error(`${code} reads ${field}, which test/wording/any-values.ts does not know`);
        },
      }),
  );
