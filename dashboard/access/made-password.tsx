import type { MadeMqttLogin } from '../../daemon/contract/mqtt-access.ts';

/** A password, shown this once: only its hash is kept. */
export function MadePassword({ made }: { made: MadeMqttLogin | null }) {
  if (made === null) return null;
  return (
    <div class="shown-once" role="status">
      <p>
        Put this into the node now. It is shown this once; who loses it takes the name away and
        makes a new one.
      </p>
      <dl class="shown-once-pair">
        <dt>User name</dt>
        <dd>
          <code>{made.name}</code>
        </dd>
        <dt>Password</dt>
        <dd class="shown-once-text">{made.password}</dd>
      </dl>
    </div>
  );
}
