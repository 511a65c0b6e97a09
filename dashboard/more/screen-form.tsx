import { lights, turnTimes } from '../device-choice.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';

const hours = Array.from({ length: 24 }, (_, hour) => hour);

/** In which light this screen is, and how its wall turns. */
export function ScreenForm() {
  const { device } = useShed();
  const { words, figures } = useReader();
  const { screen } = words;
  const chosen = device.choice.value;
  return (
    <form class="reader-form">
      <h2>{screen.title}</h2>
      <label>
        {screen.light}
        <select
          class="input"
          value={chosen.light}
          onChange={({ currentTarget: { value } }) =>
            device.choose({ light: lights.find((light) => light === value) ?? chosen.light })
          }
        >
          {lights.map((light) => (
            <option key={light} value={light}>
              {screen.lights[light]}
            </option>
          ))}
        </select>
      </label>
      {(['nightFrom', 'nightUntil'] as const).map((edge) => (
        <label key={edge}>
          {screen[edge]}
          <select
            class="input"
            value={chosen[edge]}
            disabled={chosen.light !== 'auto'}
            onChange={({ currentTarget }) => device.choose({ [edge]: Number(currentTarget.value) })}
          >
            {hours.map((hour) => (
              <option key={hour} value={hour}>
                {clockHour(hour)}
              </option>
            ))}
          </select>
        </label>
      ))}
      <p class="footnote">{screen.duskNote}</p>
      <label>
        {screen.turn}
        <select
          class="input"
          value={chosen.turnSeconds}
          onChange={({ currentTarget: { value } }) =>
            device.choose({
              turnSeconds:
                turnTimes.find((seconds) => seconds === Number(value)) ?? chosen.turnSeconds,
            })
          }
        >
          {turnTimes.map((seconds) => (
            <option key={seconds} value={seconds}>
              {seconds === 0 ? screen.turnByHand : screen.turnSeconds(figures.number(seconds, 0))}
            </option>
          ))}
        </select>
      </label>
    </form>
  );
}

/** “21:00” */
function clockHour(hour: number): string {
  return `${String(hour).padStart(2, '0')}:00`;
}
