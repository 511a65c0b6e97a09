import type { RuleTrialReply } from '../../daemon/contract/found-topic.ts';
import { agoOf } from '../format/painters-time.ts';
import { reading } from '../format/reading.ts';
import { useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { useShed } from '../shed-context.ts';

/** What a rule would make of the messages that came last. */
export function TrialTable({ trial }: { trial: RuleTrialReply }) {
  const { live } = useShed();
  const reader = useReader();
  const { things, times, topics: all } = reader.words;
  const words = all.trial;
  const { faults, topics, takenByOthers, tried } = trial;
  if (faults.length > 0) {
    return (
      <ul class="trial-faults">
        {faults.map(({ pointer, detail, detailSaid }) => (
          <li key={`${pointer} ${detail}`}>
            <Said sentence={detailSaid} />
          </li>
        ))}
      </ul>
    );
  }
  return (
    <>
      <p>
        {topics === 0 ? words.noTopic : words.wouldTake(topics)}{' '}
        {takenByOthers > 0 && words.othersTake(takenByOthers)}
      </p>
      {tried.length > 0 && (
        <table class="figures figures-wide trial">
          <thead>
            <tr>
              <th scope="col">{words.message}</th>
              <th scope="col">{words.become}</th>
            </tr>
          </thead>
          <tbody>
            {tried.map(({ message, readings, refused }, index) => (
              <tr key={`${message.topic} ${message.at} ${index}`}>
                <td>
                  {message.topic}
                  <br />
                  <code>{message.text}</code>{' '}
                  <small>{times.ago(agoOf(Date.parse(message.at), live.now.value))}</small>
                </td>
                <td>
                  <ul>
                    {readings.map(({ sensor, quantity, value, at }) => (
                      <li key={`${sensor} ${quantity}`}>
                        {at === null
                          ? words.reading(
                              <strong>{reading(quantity, value, reader)}</strong>,
                              things.quantitiesWithin[quantity],
                              sensor,
                            )
                          : words.readingAt(
                              <strong>{reading(quantity, value, reader)}</strong>,
                              things.quantitiesWithin[quantity],
                              sensor,
                              reader.calendar.exact(Date.parse(at)),
                            )}
                      </li>
                    ))}
                    {refused.map(({ code, detail, detailSaid }) => (
                      <li key={`${code} ${detail}`} class="trial-refused">
                        <Said sentence={detailSaid} />
                      </li>
                    ))}
                  </ul>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </>
  );
}
