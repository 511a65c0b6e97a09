import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import type { Face } from '../../daemon/contract/plan.ts';
import { facesLine, mixtureLine } from '../format/lists.ts';
import { SelectField, TextField } from '../forms/field.tsx';
import { MeasureField } from '../forms/measure-field.tsx';
import { optionalNumberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WhenField, whenOf } from '../forms/when-field.tsx';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useOwnName } from '../own-name.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { StillThere } from '../trade/still-there.tsx';
import { useLater } from '../use-later.ts';
import { useReply } from '../use-reply.ts';
import { type ActionProps, about } from './action-props.ts';
import { likelyTin, nextCoat } from './coat-guess.ts';
import { PotsFields, potsOf } from './pots-fields.tsx';

const allFaces: readonly Face[] = ['face', 'back', 'edges', 'ends'];

/** On a network that hangs nobody waits longer for the tins. */
const TINS_MS = 1_500;

type CoatFormProps = ActionProps & { onMoved: () => void; onClose: () => void };

/** Records a coat; then the rags, before anything else. */
export function CoatForm({ batch, onDone, onMoved, onClose }: CoatFormProps) {
  const { api, live } = useShed();
  const { words, figures, locale } = useReader();
  const ownName = useOwnName();
  const sending = useSending();
  const [recorded, setRecorded] = useState(false);
  const { replied } = useReply(useCallback(() => api.call('listTins', {}), [api]));
  const tins =
    replied.kind === 'there' ? replied.reply.filter((tin) => tin.emptiedAt === null) : [];
  // Sent before the tins have come, a coat would lose the tin that is meant.
  const areTinsAwaited = !useLater(TINS_MS) && replied.kind === 'loading';
  const coats = batch.plan.coats;
  const [index, setIndex] = useState(nextCoat(batch));
  const [tinId, setTinId] = useState<string | null>(null);
  const planned = coats[index];
  const coatWords = words.actions.coat;

  async function record(form: FormData): Promise<void> {
    const faces = allFaces.filter((face) => form.has(`face-${face}`));
    const coat = await sending.record('createCoat', about(batch), (id) => ({
      params: { id: batch.id },
      body: {
        id,
        coat: index,
        finishedAt: whenOf(form, 'finishedAt', live.clock().shedNow),
        faces: faces.length === 0 ? null : faces,
        usedL: optionalNumberOf(form, 'usedL'),
        pots: potsOf(form),
        colour: textOf(form, 'colour') || null,
        tin: textOf(form, 'tin') || null,
        tinId: textOf(form, 'tinId') || null,
      },
    }));
    if (coat === null) return;
    setRecorded(true);
    onDone(
      coat.kind === 'waits' ? words.actions.kept : coatWords.recorded(ownName(coat.reply.name)),
    );
  }

  if (recorded) return <RagsNow onClose={onClose} />;
  return (
    <>
      <StillThere batch={batch} onMoved={onMoved} />
      <WriteFrame problem={sending.problem} busy={sending.busy} onSend={record}>
        <SelectField
          label={coatWords.which}
          name="coat"
          value={String(index)}
          onChange={(value) => setIndex(Number(value))}
          pointer="/coat"
          problem={sending.problem}
          {...(planned === undefined ? {} : { hint: plannedLine(planned) })}
        >
          {coats.map((coat, at) => (
            <option key={coat.name} value={String(at)}>
              {coatWords.ofPlan(
                figures.number(at + 1),
                figures.number(coats.length),
                ownName(coat.name),
              )}
            </option>
          ))}
        </SelectField>
        <WhenField
          legend={coatWords.lastBoard}
          name="finishedAt"
          pointer="/finishedAt"
          problem={sending.problem}
          now={live.now.peek()}
        />
        {tins.length > 0 && (
          <SelectField
            label={coatWords.tin}
            name="tinId"
            value={tinId ?? likelyTin(batch, tins) ?? ''}
            onChange={setTinId}
            pointer="/tinId"
            problem={sending.problem}
          >
            <option value="">{coatWords.tinNotSaid}</option>
            {tins.map((tin) => (
              <option key={tin.id} value={tin.id}>
                {tin.name}
              </option>
            ))}
          </SelectField>
        )}
        <button type="submit" class="button button-main button-wide" disabled={areTinsAwaited}>
          {coatWords.record}
        </button>
        <details class="more">
          <summary>{coatWords.more}</summary>
          <div class="field-grid">
            <MeasureField
              label={coatWords.used}
              name="usedL"
              measure="litres"
              pointer="/usedL"
              problem={sending.problem}
            />
            <TextField
              label={coatWords.colour}
              name="colour"
              pointer="/colour"
              problem={sending.problem}
            />
            <TextField
              label={coatWords.tinName}
              name="tin"
              pointer="/tin"
              problem={sending.problem}
            />
          </div>
          <PotsFields problem={sending.problem} />
          <fieldset class="faces">
            <legend>{coatWords.faces}</legend>
            {allFaces.map((face) => (
              <label key={face} class="tick">
                <input type="checkbox" name={`face-${face}`} />
                <span>{words.things.faces[face]}</span>
              </label>
            ))}
          </fieldset>
        </details>
      </WriteFrame>
    </>
  );

  function plannedLine({ mixture, faces }: (typeof coats)[number]): string {
    return coatWords.planned(
      mixtureLine(mixture, words.things),
      facesLine(faces, words.things, locale),
    );
  }
}

function RagsNow({ onClose }: { onClose: () => void }) {
  const { cautions, actions } = useReader().words;
  const heading = useRef<HTMLHeadingElement>(null);
  const card = useRef<HTMLDivElement>(null);
  // All of it, and the button below it, before one has to look for them.
  useEffect(() => {
    card.current?.scrollIntoView({ block: 'nearest' });
    heading.current?.focus();
  }, []);
  return (
    <div class="caution caution-now" ref={card}>
      <h3 ref={heading} tabIndex={-1}>
        {cautions.rags.title}
      </h3>
      {cautions.rags.lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <button type="button" class="button button-main" onClick={onClose}>
        {actions.coat.ragsSeen}
      </button>
      <p>{actions.coat.lockUp(<a href="#/lock-up">{actions.coat.lockUpLink}</a>)}</p>
    </div>
  );
}
