import type { Changes } from './changes.ts';
import type { Clock } from './clock.ts';
import type { DaemonLog } from './daemon-log.ts';
import type { TopicRulePort } from './http/topic-rule-port.ts';
import { discovery } from './ingest/discovery.ts';
import type { IntakeParts } from './ingest/intake.ts';
import { listenToAll } from './ingest/listen-to-all.ts';
import type { MessagePort } from './ingest/message-port.ts';
import { topicRules } from './ingest/topic-rules.ts';
import type { Monitor } from './monitor/monitor.ts';
import type { OpenSite } from './open-site.ts';
import type { Settings } from './settings/schema.ts';

interface TopicsParts {
  settings: Settings;
  clock: Pick<Clock, 'now'>;
  log: DaemonLog;
  site: {
    reader: Pick<OpenSite['reader'], 'topicRules'>;
    writer: Pick<OpenSite['writer'], 'createTopicRule' | 'changeTopicRule' | 'removeTopicRule'>;
  };
  monitor: Pick<Monitor, 'factsChanged'>;
  changes: Pick<Changes, 'changed'>;
}

export interface SiteTopics {
  /** For the intake: what becomes of topics beside the default layout. */
  otherTopics: NonNullable<IntakeParts['otherTopics']>;
  /** What to listen to at another broker, at the start. */
  filters: () => readonly string[];
  /** Told once where messages come from. */
  comeFrom: (port: Pick<MessagePort, 'listenTo'>) => void;
  port: TopicRulePort;
  close: () => Promise<void>;
}

/** Topic rules, and the topics that want one: kept in the store, in force at the intake. */
export function siteTopics(parts: TopicsParts): SiteTopics {
  const { settings, clock, log, monitor } = parts;
  const { reader, writer } = parts.site;
  const { maxTopics, maxBytes, maxRules } = settings.discovery;
  let from: Pick<MessagePort, 'listenTo'> | null = null;
  const rules = topicRules({
    site: settings.site,
    maxBytes: settings.mqtt.maxPayloadBytes,
    listenTo: (filters) => from?.listenTo(filters),
    unusable: (id, faults) => log.error({ id, faults }, 'a topic rule cannot be used'),
  });
  rules.replace(reader.topicRules());
  const { external } = settings.mqtt;
  const listener =
    external === null
      ? null
      : listenToAll({
          url: external,
          now: clock.now,
          heard(topic, payload, retained) {
            // What a rule takes comes by the session that it belongs to.
            if (!rules.takes(topic)) found.note(topic, payload, retained);
          },
          log,
        });
  const found = discovery({
    ...{ site: settings.site, rules, maxTopics, maxBytes, now: clock.now, listener },
  });
  const inForce = async (edit: Promise<unknown>): Promise<void> => {
    await edit;
    rules.replace(reader.topicRules());
    found.rulesChanged();
    monitor.factsChanged();
    parts.changes.changed(null);
  };
  return {
    otherTopics: { heard: found.note, decode: rules.decode },
    filters: rules.filters,
    comeFrom(port) {
      from = port;
    },
    port: {
      all: reader.topicRules,
      maxRules,
      faults: rules.faults,
      hiddenBy: rules.hiddenBy,
      create: (rule, heard) => inForce(writer.createTopicRule(rule, heard)),
      change: (rule, at) => inForce(writer.changeTopicRule(rule, at)),
      remove: (id, at) => inForce(writer.removeTopicRule(id, at)),
      discovery: found.list,
      tryOut: found.tryOut,
      sensorsOf: found.sensorsOf,
      listenUntil: async (at) => listener?.listenUntil(at),
    },
    close: async () => listener?.close(),
  };
}
