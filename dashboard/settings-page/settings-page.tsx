import { useCallback, useState } from 'preact/hooks';
import type { ListedSetting } from '../../daemon/contract/setting.ts';
import { TextField } from '../forms/field.tsx';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useReader } from '../reader.ts';
import { settingsAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { type DescribedList, useDescribed } from './descriptions.ts';
import { SetAside } from './set-aside.tsx';
import { SettingEntry } from './setting-entry.tsx';
import { fitsSearch } from './setting-value.ts';

/** Stands in the address for what is at no section, and for what was changed. */
const TOP = 'top';
const CHANGED = 'changed';

const CONFIG_FLAG = '--config';
const RELOAD = 'systemctl reload boardcure';

/** Every setting in force: where it came from, what it takes, how it is changed. */
export function SettingsPage({ section }: { section: string | null }) {
  const { api, live } = useShed();
  const { settings: said } = useReader().words;
  // Changed at another page: read anew, so that both show the same.
  const changes = live.overview.value?.settingChanges ?? 0;
  const ask = useCallback(() => api.call('listSettings', {}), [api, changes]);
  const { replied, again } = useReply(ask);
  const list = useDescribed(replied.kind === 'there' ? replied.reply : null);
  return (
    <main
      class="page page-wide settings-page"
      aria-busy={list === null && replied.kind !== 'failed'}
    >
      <h1>{said.title}</h1>
      <p class="lead">{said.says}</p>
      {replied.kind === 'failed' && <ProblemNote problem={replied.problem} />}
      {list !== null && <Listed list={list} section={section} onKept={again} />}
    </main>
  );
}

interface ListedProps {
  list: DescribedList;
  section: string | null;
  onKept: () => void;
}

function Listed({ list, section, onKept }: ListedProps) {
  const { settings: said } = useReader().words;
  const [typed, setTyped] = useState('');
  // What was changed here stays in sight, also where it is at its default again.
  const [touched, setTouched] = useState<readonly string[]>([]);
  const sections = [...new Set(list.settings.map(sectionOf))];
  const shown = section ?? CHANGED;
  const found = list.settings.filter((one) =>
    typed.trim() === ''
      ? isIn(one, shown) || (shown === CHANGED && touched.includes(one.name))
      : fitsSearch(one, typed.trim()),
  );
  return (
    <>
      <p>
        {list.file === null
          ? said.noFile(<code>{CONFIG_FLAG}</code>)
          : said.file(<code>{list.file}</code>)}{' '}
        {said.reload(<code>{RELOAD}</code>)}
      </p>
      <SetAside list={list} onKept={onKept} />
      <div class="settings-columns">
        <div>
          <div
            class="settings-search"
            onInput={(event) => setTyped((event.target as HTMLInputElement).value)}
          >
            <TextField label={said.search} name="q" pointer="" problem={null} />
          </div>
          <nav aria-label={said.sections}>
            <ul class="settings-sections">
              {[CHANGED, ...sections].map((one) => (
                <li key={one}>
                  <a
                    href={settingsAddress(one)}
                    {...(one === shown && typed === '' ? { 'aria-current': 'page' as const } : {})}
                  >
                    <SectionName section={one} />
                  </a>
                </li>
              ))}
            </ul>
          </nav>
        </div>
        <section aria-labelledby="settings-section">
          <h2 id="settings-section">
            {typed.trim() === '' ? <SectionName section={shown} /> : typed.trim()}
          </h2>
          <p role="status" class="quiet">
            {found.length === 0 ? said.none : said.count(found.length)}
          </p>
          {found.map((setting) => (
            <SettingEntry
              key={setting.name}
              setting={setting}
              onKept={() => {
                setTouched([...touched, setting.name]);
                onKept();
              }}
            />
          ))}
        </section>
      </div>
    </>
  );
}

const sectionOf = ({ section }: ListedSetting): string => (section === '' ? TOP : section);

const isIn = (setting: ListedSetting, section: string): boolean =>
  section === CHANGED
    ? setting.from !== 'default' || setting.waits
    : sectionOf(setting) === section;

function SectionName({ section }: { section: string }) {
  const { settings: said } = useReader().words;
  if (section !== CHANGED && section !== TOP) return <code>{section}</code>;
  return <span>{section === TOP ? said.top : said.changed}</span>;
}
