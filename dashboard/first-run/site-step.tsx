import { createCalendar } from '../format/calendar.ts';
import { CopyLine } from '../forms/copy-line.tsx';
import { TextField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { Screen } from './screen.tsx';
import type { StepProps } from './step-props.ts';

/** What the shed is called, and whose clock it goes by. */
export function SiteStep({ overview, site, again, goOn }: StepProps) {
  const { api, live } = useShed();
  const { words, locale } = useReader();
  const said = words.firstRun.site;
  const sending = useSending();
  const ownZone = Intl.DateTimeFormat().resolvedOptions().timeZone;

  async function name(form: FormData): Promise<void> {
    const body = { name: textOf(form, 'name') };
    if ((await sending.send(() => api.call('changeSite', { body }))) === null) return;
    await again();
    goOn();
  }

  return (
    <Screen step="site" says={said.says} isDone={false}>
      <WriteFrame problem={sending.problem} busy={sending.busy} onSend={name}>
        <TextField
          label={said.name}
          name="name"
          value={overview.siteName ?? ''}
          pointer="/name"
          problem={sending.problem}
          hint={said.nameHint}
        />
        <button type="submit" class="button button-main">
          {said.keep}
        </button>
      </WriteFrame>
      <p>
        {said.zone(
          <strong>{site.timeZone}</strong>,
          createCalendar(site.timeZone, locale).exact(live.now.value),
        )}
      </p>
      <details class="more" open={ownZone !== site.timeZone}>
        <summary>{said.otherZone}</summary>
        <CopyLine label={said.zoneHow} text={`timeZone = "${ownZone}"`} />
      </details>
    </Screen>
  );
}
