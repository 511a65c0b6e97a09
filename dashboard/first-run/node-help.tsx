import type { Site } from '../../daemon/contract/site.ts';
import { CopyLine } from '../forms/copy-line.tsx';
import { useReader } from '../reader.ts';

/** What is typed into a sensor node, each line to be copied. */
export function NodeHelp({ site, open }: { site: Site; open: boolean }) {
  const said = useReader().words.firstRun.sensor;
  const { kind, port } = site.broker;
  const topic = `boardcure/${site.topicName}/sensor/node-1/air-temperature`;
  const address = addressOf(site);
  return (
    <details class="more" open={open}>
      <summary>{said.how}</summary>
      <div class="first-run-node">
        {kind === 'external' && <p>{said.external}</p>}
        {kind === 'embedded' && (
          <>
            <CopyLine label={said.address} text={address} />
            {port !== null && <CopyLine label={said.port} text={String(port)} />}
          </>
        )}
        <CopyLine label={said.topic} text={topic} />
        <CopyLine label={said.payload} text="18.4" />
        <p class="field-hint">{said.otherTopics}</p>
        {kind === 'embedded' && port !== null && (
          <CopyLine
            label={said.tryIt}
            text={`mosquitto_pub -h ${address} -p ${port} -q 1 -t ${topic} -m 18.4`}
          />
        )}
      </div>
    </details>
  );
}

/** The name or address that a node can reach: the one this page was opened by, unless it is “here”. */
function addressOf({ addresses }: Site): string {
  const { hostname } = location;
  const isHere = /^(localhost|127\.|\[::1\])/.test(hostname);
  return isHere ? (addresses[0] ?? hostname) : hostname;
}
