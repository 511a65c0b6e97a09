import { useEffect, useRef, useState } from 'preact/hooks';
import type { ListedSetting, SettingWish } from '../../daemon/contract/setting.ts';
import { closesOnEscape } from '../forms/escape.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { SettingField } from './setting-field.tsx';
import { valueText } from './setting-value.ts';
import { wishOf } from './setting-wish.ts';

interface SettingChangeProps {
  setting: ListedSetting;
  /** Told once it was kept. */
  onKept: () => void;
}

/** How a setting is changed: here, by a small form; or why not. */
export function SettingChange({ setting, onKept }: SettingChangeProps) {
  const { settings: said } = useReader().words;
  const [isOpen, setIsOpen] = useState(false);
  const [kept, setKept] = useState('');
  if (setting.changes === 'by-hand') return <p>{said.byHand}</p>;
  if (setting.changes === 'at-start') {
    return <p>{said.atStart(<code>{setting.source}</code>)}</p>;
  }
  const opener = `change-${setting.name}`;
  const close = () => setIsOpen(false);
  function closeKept(): void {
    close();
    setKept(said.kept[setting.holds]);
    document.getElementById(opener)?.focus();
    onKept();
  }
  return (
    <fieldset
      class="setting-change"
      aria-label={said.changeIt(setting.name)}
      onKeyDown={isOpen ? closesOnEscape(close, opener) : undefined}
    >
      <button
        type="button"
        id={opener}
        class="button"
        aria-expanded={isOpen}
        aria-label={said.changeIt(setting.name)}
        onClick={() => {
          setKept('');
          setIsOpen(!isOpen);
        }}
      >
        {said.change}
      </button>
      {isOpen && <ChangeForm setting={setting} onKept={closeKept} />}
      <p class="action-said" role="status">
        {kept}
      </p>
    </fieldset>
  );
}

function ChangeForm({ setting, onKept }: SettingChangeProps) {
  const { api } = useShed();
  const reader = useReader();
  const { settings: said } = reader.words;
  const sending = useSending();
  const { problem } = sending;
  const form = useRef<HTMLDivElement>(null);
  useEffect(() => {
    form.current?.querySelector<HTMLElement>('input:checked, input:not([type=hidden])')?.focus();
  }, []);

  async function send(body: SettingWish): Promise<void> {
    const done = await sending.send(() => api.call('changeSettings', { body }));
    if (done !== null) onKept();
  }

  return (
    <div ref={form} class="setting-form">
      <WriteFrame
        problem={problem}
        busy={sending.busy}
        onSend={(typed) => send(wishOf(setting, typed))}
      >
        <SettingField setting={setting} problem={problem} />
        <div class="setting-buttons">
          <button type="submit" class="button button-main">
            {said.keep}
          </button>
          {setting.isChosen && (
            <button
              type="button"
              class="button button-quiet"
              onClick={() => void send({ settings: { [setting.name]: null } })}
            >
              {said.backTo[setting.otherwiseFrom](valueText(setting.otherwise, setting, reader))}
            </button>
          )}
        </div>
      </WriteFrame>
    </div>
  );
}
