import type { Choice } from '../kept-choice.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { languageNames, languages } from '../words/language.ts';

const unitSystems = ['metric', 'us'] as const;

/** In which language and units this device is read. */
export function ReaderForm() {
  const { readerChoice } = useShed();
  const { words } = useReader();
  const { frame } = words;
  const chosen = readerChoice.choice.value;
  const choose = (change: Partial<Choice>) => {
    // Where the words cannot be fetched, what is shown stays as it is.
    readerChoice.choose({ ...chosen, ...change }).catch(() => undefined);
  };
  return (
    <form class="reader-form">
      <label>
        {frame.language}
        <select
          class="input"
          value={chosen.language ?? ''}
          onChange={({ currentTarget }) =>
            choose({
              language: languages.find((language) => language === currentTarget.value) ?? null,
            })
          }
        >
          <option value="">{frame.asThisDevice}</option>
          {languages.map((language) => (
            <option key={language} value={language} lang={language}>
              {languageNames[language]}
            </option>
          ))}
        </select>
      </label>
      <label>
        {frame.units}
        <select
          class="input"
          value={chosen.units ?? ''}
          onChange={({ currentTarget }) =>
            choose({ units: unitSystems.find((units) => units === currentTarget.value) ?? null })
          }
        >
          <option value="">{frame.asThisDevice}</option>
          {unitSystems.map((units) => (
            <option key={units} value={units}>
              {frame.unitSystems[units]}
            </option>
          ))}
        </select>
      </label>
    </form>
  );
}
