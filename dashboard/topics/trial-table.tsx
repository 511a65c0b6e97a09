import type { RuleTrialReply } from '../../daemon/contract/found-topic.ts';
import { measured } from '../format/measured.ts';
import { agoWords } from '../format/painters-time.ts';
import { useShed } from '../shed-context.ts';
import { quantityWords } from '../words/thing-words.ts';

/** What a rule would make of the messages that came last. */
export function TrialTable({ trial }: { trial: RuleTrialReply }) {
  const { live, calendar } = useShed();
  const { faults, topics, takenByOthers, tried } = trial;
  if (faults.length > 0) {
    return (
      <ul class="trial-faults">
        {faults.map(({ pointer, detail }) => (
          <li key={`${pointer} ${detail}`}>{detail}</li>
        ))}
      </ul>
    );
  }
  return (
    <>
      <p>
        {topics === 0
          ? 'No message has come yet that this rule would take.'
          : `It would take ${topics === 1 ? 'one topic' : `${topics} topics`} that ${topics === 1 ? 'was' : 'were'} heard.`}
        {takenByOthers > 0 && ` Other rules take ${takenByOthers} more that fit.`}
      </p>
      {tried.length > 0 && (
        <table class="figures figures-wide trial">
          <thead>
            <tr>
              <th scope="col">This message</th>
              <th scope="col">would become</th>
            </tr>
          </thead>
          <tbody>
            {tried.map(({ message, readings, refused }, index) => (
              <tr key={`${message.topic} ${message.at} ${index}`}>
                <td>
                  {message.topic}
                  <br />
                  <code>{message.text}</code>{' '}
                  <small>{agoWords(Date.parse(message.at), live.now.value)}</small>
                </td>
                <td>
                  <ul>
                    {readings.map(({ sensor, quantity, value, at }) => (
                      <li key={`${sensor} ${quantity}`}>
                        <strong>{measured(quantity, value)}</strong>{' '}
                        {quantityWords[quantity].name.toLowerCase()} of {sensor}
                        {at !== null && `, measured ${calendar.exact(Date.parse(at))}`}
                      </li>
                    ))}
                    {refused.map(({ code, detail }) => (
                      <li key={`${code} ${detail}`} class="trial-refused">
                        {detail}
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
