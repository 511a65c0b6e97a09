import type { PayloadKind, RuleTimeFormat } from '../../../daemon/contract/topic-rule.ts';
import type { Node } from '../node.ts';
import { plural } from '../plural.ts';

/**
 * Topics at the MQTT broker beside the default ones. A topic is the address of a message, such as
 * `farm/attic/temp`; a rule says which sensor, and which quantity of it, a message is about. What
 * stands in {braces}, between slashes or in code is typed as it stands.
 */
export const topics = {
  title: 'Topics',
  about:
    'Sensors that use the default topics are understood as they are. For any other device a rule says which topics are its own, and what its messages hold.',
  foundTitle: 'Found, not known yet',
  rulesTitle: 'Rules',
  newRule: 'A new rule',
  changeRule: 'Change a rule',
  writeNew: 'Write a new rule',
  leaveAsItWas: 'Leave it as it was',

  /** Topics that look like readings and that nobody knows yet. */
  found: {
    none: 'None just now. What any device sends to the broker appears here, on whatever topic, as long as there is a number in it.',
    noneOthers: (others: number) =>
      `None just now. What any device sends to the broker appears here, on whatever topic, as long as there is a number in it. ${plural(
        'en',
        others,
        {
          one: `${others} topic was heard without one.`,
          other: `${others} topics were heard without one.`,
        },
      )}`,
    more: (count: number) =>
      plural('en', count, { one: `${count} more topic`, other: `${count} more topics` }),
    leftOut: (messages: number) =>
      plural('en', messages, {
        one: `${messages} message on further topics was not looked at: there is room for a number of topics (discovery.maxTopics in the settings).`,
        other: `${messages} messages on further topics were not looked at: there is room for a number of topics (discovery.maxTopics in the settings).`,
      }),
    onRequest: 'Unknown topics at the other broker are listened to on request, for ten minutes.',
    listeningUntil: (until: string) => `Listening to all topics until ${until}.`,
    listen: 'Listen for ten minutes',
    stopListening: 'Stop listening',

    /** When the last message came and how many there were; `ago` is “4 minutes ago” or “just now”. */
    heard: (ago: string, messages: number) => (messages > 1 ? `${ago}, ${messages} messages` : ago),
    heardKept: (ago: string, messages: number) =>
      messages > 1
        ? `kept by the broker, heard ${ago}, ${messages} messages`
        : `kept by the broker, heard ${ago}`,
    /** Label of a choice of quantities; `shown` is a figure of the message, as “70.7”. */
    whatIs: (shown: string) => `What ${shown} is`,
    /** `pointer` is where in the message it stands, as “/data/temp”. */
    whatIsAt: (shown: string, pointer: string) => `What ${shown} at ${pointer} is`,
    looksLike: (reading: string) => `looks like ${reading}`,
    notUsed: 'not used',
    choose: 'choose',
    whereHangs: (sensor: string) => `Where ${sensor} hangs`,
    nowhereYet: 'nowhere yet',
    takeIn: 'Take it in',
    taken: (sensor: string) => `${sensor} is a sensor from its next message on.`,
    takenAt: (sensor: string, place: string) =>
      `${sensor} hangs at ${place}; its next message counts.`,
    writeRule: 'Write a rule for it instead',
    writeRuleMore: (more: number) =>
      plural('en', more, {
        one: `Write a rule for it instead (${more} more number in it)`,
        other: `Write a rule for it instead (${more} more numbers in it)`,
      }),
  },

  payloads: {
    text: 'A number as text',
    json: 'JSON',
    senml: 'SenML',
  } satisfies Record<PayloadKind, string>,

  list: {
    none: 'None yet. Sensors on the default topics need none.',
    /** “JSON: air temperature, battery” */
    brings: (payload: string, quantities: string) => `${payload}: ${quantities}`,
    ofSensor: (sensor: Node) => ['of ', sensor],
    hiddenBy: (other: Node) => [
      'It gets nothing: the rule for ',
      other,
      ' comes first and takes all its topics.',
    ],
    change: 'Change it',
    takeAway: 'Take it away',
    gone: (pattern: string) => `The rule for ${pattern} is taken away; its readings stay.`,
  },

  editor: {
    pattern: 'Topics',
    patternHint: '{sensor} names a level, + is any one level, # is all the rest',
    sensor: 'The sensor’s name',
    sensorHint: 'text, parts like {sensor}, and in JSON places like {/id}',
    payload: 'What a message looks like',
    oneMore: 'One more quantity',
    timeFrom: 'Where its time stands',
    timeFromHint: 'like /time; leave it empty if there is none',
    timeFormat: 'How the time is written',
    timeFormats: {
      any: 'tell by itself',
      iso: 'ISO 8601',
      'epoch-s': 'seconds since 1970',
      'epoch-ms': 'milliseconds since 1970',
      'age-s': 'seconds ago',
      'age-ms': 'milliseconds ago',
    } satisfies Record<RuleTimeFormat, string>,
    whereHeardHang: 'Where sensors heard so far hang',
    nowhereYet: 'nowhere yet',
    save: 'Save the rule',
    saveChange: 'Save the change',
    saved: (pattern: string) => `The rule for ${pattern} holds from now on.`,
  },

  /** One quantity of a rule. */
  value: {
    first: 'What it brings',
    /** Heading of the second quantity and of those after it. */
    further: 'And',
    quantity: 'Quantity',
    pointer: 'Where it stands',
    pointerHint: 'like /data/temp, or /0/t in a list',
    name: 'End of its name',
    nameHint: 'what comes after the last / : or .',
    unit: 'Its unit',
    /** A share of one, instead of percent. */
    fraction: 'fraction',
    /** What the number is multiplied by. */
    times: 'Times',
    timesHint: '0.1 for tenths',
    otherSensor: 'Another sensor',
    otherSensorHint: 'if one message has several',
    leaveOut: (quantity: string) => `Leave ${quantity} out`,
  },

  /** What a rule would make of the messages that came last. */
  trial: {
    title: 'What it would make of the last messages',
    nothingYet: 'Nothing tried yet.',
    noTopic: 'No message has come yet that this rule would take.',
    wouldTake: (count: number) =>
      plural('en', count, {
        one: 'It would take one topic that was heard.',
        other: `It would take ${count} topics that were heard.`,
      }),
    /** After one of the two sentences before. */
    othersTake: (count: number) =>
      plural('en', count, {
        one: `Other rules take ${count} more that fits.`,
        other: `Other rules take ${count} more that fit.`,
      }),
    message: 'This message',
    become: 'would become',
    /** “21.5 °C air temperature of n2” */
    reading: (reading: Node, quantity: string, sensor: string) => [
      reading,
      ` ${quantity} of ${sensor}`,
    ],
    readingAt: (reading: Node, quantity: string, sensor: string, at: string) => [
      reading,
      ` ${quantity} of ${sensor}, measured ${at}`,
    ],
  },
};
