import { decodeForecast } from '../../sensors/payload/outdoor-forecast.ts';
import type { OutdoorForecastPoint } from '../rules/facts.ts';
import type { groupCommit } from './group-commit.ts';
import type { TakeMessage } from './message-port.ts';

export interface ForecastParts {
  site: string;
  now: () => number;
  /** Settles once the forecast is on disk. */
  keep: (points: OutdoorForecastPoint[]) => Promise<void>;
  /** Told of a forecast that could not be read, before it is kept for inspection. */
  refused: () => void;
  queue: Pick<ReturnType<typeof groupCommit>, 'add'>;
  /** Everything that is no forecast goes here. */
  others: TakeMessage;
}

/** How long the sender of a forecast that could not be kept is held before it is let go. */
const refusedAfterMs = 8000;
/** How much of a refused forecast is kept for inspection, in characters. */
const keptCharacters = 400;

export const forecastTopic = (site: string) => `boardcure/${site}/forecast/outdoors`;

/** Takes weather forecasts out of the stream of messages; acknowledged once they are on disk. */
export function forecastPort(parts: ForecastParts): TakeMessage {
  const own = forecastTopic(parts.site);
  return (message, acknowledge) => {
    if (message.topic !== own) {
      parts.others(message, acknowledge);
      return;
    }
    const text = new TextDecoder('utf-8').decode(message.payload);
    const decoded = decodeForecast(text);
    if (decoded.kind === 'forecast') {
      parts.keep([...decoded.points]).then(
        () => acknowledge(null),
        (cause: unknown) => {
          const failure = cause instanceof Error ? cause : new Error(String(cause));
          // Whoever is cut off at once comes back at once, and a full disk lasts.
          setTimeout(() => acknowledge(failure), refusedAfterMs).unref();
        },
      );
      return;
    }
    parts.refused();
    const refusal = {
      at: parts.now(),
      topic: own,
      code: decoded.refusal.code,
      detail: decoded.refusal.detail,
      detailSaid: decoded.refusal.said,
      payloadStart: text.slice(0, keptCharacters),
      payloadBytes: message.payload.byteLength,
    };
    parts.queue.add([], [refusal], acknowledge);
  };
}
