import { useState } from 'preact/hooks';
import type { FoundTopic, FoundValue } from '../../daemon/contract/found-topic.ts';
import type { Overview } from '../../daemon/contract/overview.ts';
import type { Quantity } from '../../daemon/contract/quantity.ts';
import { agoOf } from '../format/painters-time.ts';
import { reading } from '../format/reading.ts';
import { SelectField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { topicAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';
import { type ChosenValue, chosenRule } from './rule-draft.ts';

interface FoundTopicEntryProps {
  found: FoundTopic;
  places: Overview['places'];
  onTaken: (said: string) => void;
}

/** More numbers than this are for the rule’s own page. */
const MOST_SHOWN = 4;

/** One topic that nobody knows: say what it is and where it hangs, and it is taken in. */
export function FoundTopicEntry({ found, places, onTaken }: FoundTopicEntryProps) {
  const { api, live } = useShed();
  const reader = useReader();
  const { things, times, topics } = reader.words;
  const words = topics.found;
  const sending = useSending();
  // What was chosen stays chosen while messages go on coming in.
  const [chosen, setChosen] = useState<Readonly<Record<string, Quantity | ''>>>({});
  const [placeId, setPlaceId] = useState('');
  const { topic, count, last, suggestion } = found;
  const guessed = found.values.filter(({ guess }) => guess !== null);
  const shown = (guessed.length > 0 ? guessed : found.values).slice(0, MOST_SHOWN);

  async function take(form: FormData): Promise<void> {
    const place = textOf(form, 'placeId');
    const rule = chosenRule(
      suggestion,
      shown.flatMap((value) => chosenValue(value, quantityOf(value, chosen))),
    );
    const made = await sending.send((id) =>
      api.call('createTopicRule', {
        body: { id, ...rule, ...(place === '' ? {} : { placeId: place }) },
      }),
    );
    if (made === null) return;
    const where = places.find(({ id }) => id === place)?.name;
    onTaken(where === undefined ? words.taken(made.sensor) : words.takenAt(made.sensor, where));
    await live.refresh();
  }

  return (
    <li class="sensor found">
      <h3>
        <code>{topic}</code>
      </h3>
      <p class="sensor-latest">
        <span>
          <code>{last.text}</code>
        </span>
        <span>
          {(last.retained ? words.heardKept : words.heard)(
            times.ago(agoOf(Date.parse(last.at), live.now.value)),
            count,
          )}
        </span>
      </p>
      <WriteFrame problem={sending.problem} busy={sending.busy} onSend={take}>
        <div class="found-fields">
          {shown.map((value) => (
            <SelectField
              key={keyOf(value)}
              label={
                keyOf(value) === ''
                  ? words.whatIs(value.shown)
                  : words.whatIsAt(value.shown, keyOf(value))
              }
              name={`quantity ${keyOf(value)}`}
              value={quantityOf(value, chosen)}
              onChange={(quantity) =>
                setChosen({ ...chosen, [keyOf(value)]: quantity as Quantity | '' })
              }
              pointer="/values"
              problem={sending.problem}
              {...(isAsGuessed(value, chosen)
                ? {
                    hint: words.looksLike(reading(value.guess.quantity, value.guess.value, reader)),
                  }
                : {})}
            >
              <option value="">{shown.length > 1 ? words.notUsed : words.choose}</option>
              {Object.entries(things.quantities).map(([quantity, name]) => (
                <option key={quantity} value={quantity}>
                  {name}
                </option>
              ))}
            </SelectField>
          ))}
          <SelectField
            label={words.whereHangs(suggestion.sensor)}
            name="placeId"
            value={placeId}
            onChange={setPlaceId}
            pointer="/placeId"
            problem={sending.problem}
          >
            <option value="">{words.nowhereYet}</option>
            {places.map((place) => (
              <option key={place.id} value={place.id}>
                {place.name}
              </option>
            ))}
          </SelectField>
          <button type="submit" class="button button-main">
            {words.takeIn}
          </button>
        </div>
      </WriteFrame>
      <a class="quiet" href={topicAddress(topic)}>
        {found.values.length > shown.length
          ? words.writeRuleMore(found.values.length - shown.length)
          : words.writeRule}
      </a>
    </li>
  );
}

const keyOf = ({ pointer, name }: FoundValue): string => pointer || name;

function quantityOf(
  value: FoundValue,
  chosen: Readonly<Record<string, Quantity | ''>>,
): Quantity | '' {
  return chosen[keyOf(value)] ?? value.guess?.quantity ?? '';
}

/** Unit and scale that were guessed hold for the quantity that was guessed with them. */
function chosenValue(value: FoundValue, quantity: Quantity | ''): ChosenValue[] {
  if (quantity === '') return [];
  const { pointer, name, guess } = value;
  const asGuessed = guess?.quantity === quantity ? guess : { unit: null, scale: 1 };
  return [{ quantity, pointer, name, unit: asGuessed.unit, scale: asGuessed.scale }];
}

type Guessed = FoundValue & { guess: NonNullable<FoundValue['guess']> };

function isAsGuessed(
  value: FoundValue,
  chosen: Readonly<Record<string, Quantity | ''>>,
): value is Guessed {
  return value.guess !== null && quantityOf(value, chosen) === value.guess.quantity;
}
