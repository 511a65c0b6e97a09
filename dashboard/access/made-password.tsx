import type { MadeMqttLogin } from '../../daemon/contract/mqtt-access.ts';
import { useReader } from '../reader.ts';

/** A password, shown this once: only its hash is kept. */
export function MadePassword({ made }: { made: MadeMqttLogin | null }) {
  const { broker } = useReader().words.access;
  if (made === null) return null;
  return (
    <div class="shown-once" role="status">
      <p>{broker.shownOnce}</p>
      <dl class="shown-once-pair">
        <dt>{broker.userName}</dt>
        <dd>
          <code>{made.name}</code>
        </dd>
        <dt>{broker.password}</dt>
        <dd class="shown-once-text">{made.password}</dd>
      </dl>
    </div>
  );
}
