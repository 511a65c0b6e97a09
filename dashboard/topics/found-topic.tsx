import { useState } from 'preact/hooks';
import type { FoundTopic, FoundValue } from '../../daemon/contract/found-topic.ts';
import type { Overview } from '../../daemon/contract/overview.ts';
import type { Quantity } from '../../daemon/contract/quantity.ts';
import { measured } from '../format/measured.ts';
import { agoWords } from '../format/painters-time.ts';
import { SelectField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { topicAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';
import { quantityWords } from '../words/thing-words.ts';
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
    onTaken(
      where === undefined
        ? `${made.sensor} is a sensor from its next message on.`
        : `${made.sensor} hangs at ${where}; its next message counts.`,
    );
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
          {last.retained ? 'kept by the broker, heard ' : ''}
          {agoWords(Date.parse(last.at), live.now.value)}
          {count > 1 ? `, ${count} messages` : ''}
        </span>
      </p>
      <WriteFrame problem={sending.problem} busy={sending.busy} onSend={take}>
        <div class="found-fields">
          {shown.map((value) => (
            <SelectField
              key={keyOf(value)}
              label={`What ${value.shown}${placeOf(value)} is`}
              name={`quantity ${keyOf(value)}`}
              value={quantityOf(value, chosen)}
              onChange={(quantity) =>
                setChosen({ ...chosen, [keyOf(value)]: quantity as Quantity | '' })
              }
              pointer="/values"
              problem={sending.problem}
              {...convertedHint(value, chosen)}
            >
              <option value="">{shown.length > 1 ? 'not used' : 'choose'}</option>
              {Object.entries(quantityWords).map(([quantity, { name }]) => (
                <option key={quantity} value={quantity}>
                  {name}
                </option>
              ))}
            </SelectField>
          ))}
          <SelectField
            label={`Where ${suggestion.sensor} hangs`}
            name="placeId"
            value={placeId}
            onChange={setPlaceId}
            pointer="/placeId"
            problem={sending.problem}
          >
            <option value="">nowhere yet</option>
            {places.map((place) => (
              <option key={place.id} value={place.id}>
                {place.name}
              </option>
            ))}
          </SelectField>
          <button type="submit" class="button button-main">
            Take it in
          </button>
        </div>
      </WriteFrame>
      <a class="quiet" href={topicAddress(topic)}>
        Write a rule for it instead
        {found.values.length > shown.length
          ? ` (${found.values.length - shown.length} more numbers in it)`
          : ''}
      </a>
    </li>
  );
}

const keyOf = ({ pointer, name }: FoundValue): string => pointer || name;
const placeOf = (value: FoundValue): string => (keyOf(value) === '' ? '' : ` at ${keyOf(value)}`);

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

function convertedHint(
  value: FoundValue,
  chosen: Readonly<Record<string, Quantity | ''>>,
): { hint?: string } {
  const { guess } = value;
  if (guess === null || quantityOf(value, chosen) !== guess.quantity) return {};
  return { hint: `looks like ${measured(guess.quantity, guess.value)}` };
}
