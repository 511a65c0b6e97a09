import { CopyLine } from '../forms/copy-line.tsx';
import { useReader } from '../reader.ts';
import { InEnglish } from '../said.tsx';
import type { DescribedSetting } from './descriptions.ts';
import { SettingChange } from './setting-change.tsx';
import { takesText, valueText } from './setting-value.ts';

/** One setting: its value at a glance, the rest when it is opened. */
export function SettingEntry({
  setting,
  onKept,
}: {
  setting: DescribedSetting;
  onKept: () => void;
}) {
  const reader = useReader();
  const { words, figures, calendar } = reader;
  const said = words.settings;
  const { name, isSecret, isSet, value, from, source, line } = setting;
  const shown = isSecret && isSet ? said.hidden : valueText(value, setting, reader);
  const { chosenAt, chosenBy } = setting;
  const when = chosenAt === null ? null : calendar.exact(Date.parse(chosenAt));
  // At which device it was chosen is said below, with the time.
  const given = from === 'chosen' ? null : source;
  const where = line === null ? given : said.inLine(source ?? '', figures.number(line));
  return (
    <details class="setting">
      <summary>
        <code class="setting-name">{name}</code>
        <span class="setting-value">{shown}</span>
        <span class={from === 'default' ? 'quiet' : 'setting-changed'}>{said.from[from]}</span>
      </summary>
      <div class="setting-more">
        <p>{setting.says ?? <InEnglish text={setting.description} />}</p>
        {setting.waits && (
          <p class="field-fault">{said.waits(valueText(setting.next, setting, reader))}</p>
        )}
        <dl>
          <dt>{said.value}</dt>
          <dd>
            {shown}
            {where !== null && (
              <>
                {' '}
                <code>{where}</code>
              </>
            )}
          </dd>
          <dt>{said.default}</dt>
          <dd>{valueText(setting.default, setting, reader)}</dd>
          <dt>{said.takes}</dt>
          <dd>{takesText(setting, reader)}</dd>
        </dl>
        {when !== null && (
          <p>{chosenBy === null ? said.chosenAt(when) : said.chosenAtBy(when, chosenBy)}</p>
        )}
        <p>{said.holds[setting.holds]}</p>
        <SettingChange setting={setting} onKept={onKept} />
        <CopyLine label={said.lines} text={setting.toml} />
      </div>
    </details>
  );
}
