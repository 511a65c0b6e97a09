import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import type { Face } from '../../daemon/contract/plan.ts';
import { SelectField, TextField } from '../forms/field.tsx';
import { optionalNumberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WhenField, whenOf } from '../forms/when-field.tsx';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useShed } from '../shed-context.ts';
import { StillThere } from '../trade/still-there.tsx';
import { useReply } from '../use-reply.ts';
import { ragCaution } from '../words/caution-words.ts';
import { facesWords, faceWords, mixtureWords } from '../words/thing-words.ts';
import type { ActionProps } from './action-props.ts';
import { PotsFields, potsOf } from './pots-fields.tsx';

const allFaces: readonly Face[] = ['face', 'back', 'edges', 'ends'];

type CoatFormProps = ActionProps & { onMoved: () => void; onClose: () => void };

/** Records a coat; then the rags, before anything else. */
export function CoatForm({ batch, onDone, onMoved, onClose }: CoatFormProps) {
  const { api, live } = useShed();
  const sending = useSending();
  const [recorded, setRecorded] = useState(false);
  const { replied } = useReply(useCallback(() => api.call('listTins', {}), [api]));
  const tins =
    replied.kind === 'there' ? replied.reply.filter((tin) => tin.emptiedAt === null) : [];
  const coats = batch.plan.coats;
  const next = Math.min(coats.length - 1, Math.max(-1, ...batch.coats.map((c) => c.coat)) + 1);
  const [index, setIndex] = useState(next);
  const planned = coats[index];

  async function record(form: FormData): Promise<void> {
    const faces = allFaces.filter((face) => form.has(`face-${face}`));
    const coat = await sending.send((id) =>
      api.call('createCoat', {
        params: { id: batch.id },
        body: {
          id,
          coat: index,
          finishedAt: whenOf(form, 'finishedAt', live.now.peek()),
          faces: faces.length === 0 ? null : faces,
          usedL: optionalNumberOf(form, 'usedL'),
          pots: potsOf(form),
          colour: textOf(form, 'colour') || null,
          tin: textOf(form, 'tin') || null,
          tinId: textOf(form, 'tinId') || null,
        },
      }),
    );
    if (coat === null) return;
    setRecorded(true);
    onDone(`Recorded: ${coat.name}. The clock runs.`);
  }

  if (recorded) return <RagsNow onClose={onClose} />;
  return (
    <>
      <StillThere batch={batch} onMoved={onMoved} />
      <WriteFrame problem={sending.problem} busy={sending.busy} onSend={record}>
        <SelectField
          label="Which coat"
          name="coat"
          value={String(index)}
          onChange={(value) => setIndex(Number(value))}
          pointer="/coat"
          problem={sending.problem}
          {...(planned === undefined ? {} : { hint: plannedWords(planned) })}
        >
          {coats.map((coat, at) => (
            <option key={coat.name} value={String(at)}>
              {at + 1} of {coats.length}: {coat.name}
            </option>
          ))}
        </SelectField>
        <WhenField
          legend="The last board was done"
          name="finishedAt"
          pointer="/finishedAt"
          problem={sending.problem}
          now={live.now.peek()}
        />
        {tins.length > 0 && (
          <SelectField
            label="Out of which tin"
            name="tinId"
            pointer="/tinId"
            problem={sending.problem}
          >
            <option value="">not said</option>
            {tins.map((tin) => (
              <option key={tin.id} value={tin.id}>
                {tin.name}
              </option>
            ))}
          </SelectField>
        )}
        <button type="submit" class="button button-main button-wide">
          Record this coat
        </button>
        <details class="more">
          <summary>Paint used, colour, tin, faces</summary>
          <div class="field-grid">
            <TextField
              label="Used"
              name="usedL"
              kind="number"
              unit="L"
              pointer="/usedL"
              problem={sending.problem}
            />
            <TextField label="Colour" name="colour" pointer="/colour" problem={sending.problem} />
            <TextField label="Tin" name="tin" pointer="/tin" problem={sending.problem} />
          </div>
          <PotsFields problem={sending.problem} />
          <fieldset class="faces">
            <legend>Faces, if other than planned</legend>
            {allFaces.map((face) => (
              <label key={face} class="tick">
                <input type="checkbox" name={`face-${face}`} />
                <span>{faceWords[face]}</span>
              </label>
            ))}
          </fieldset>
        </details>
      </WriteFrame>
    </>
  );
}

function plannedWords(planned: ActionProps['batch']['plan']['coats'][number]): string {
  return `${mixtureWords(planned.mixture)}; ${facesWords(planned.faces)}`;
}

function RagsNow({ onClose }: { onClose: () => void }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return (
    <div class="caution caution-now">
      <h3 ref={heading} tabIndex={-1}>
        {ragCaution.title}
      </h3>
      {ragCaution.lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <button type="button" class="button button-main" onClick={onClose}>
        The rags are seen to
      </button>
      <p>
        <a href="#/lock-up">The lock-up list of today</a>: until the rags are ticked there, they are
        told again.
      </p>
    </div>
  );
}
