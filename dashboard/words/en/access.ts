import type { Device } from '../../../daemon/contract/access.ts';
import type { MqttLogin, MqttMode, PairingSensor } from '../../../daemon/contract/mqtt-access.ts';
import type { Role } from '../../../daemon/contract/role.ts';
import type { Node } from '../node.ts';

/** Who may do what from here: log-in, PINs, tablets, devices, and names at the broker. */
export const access = {
  title: 'Access',

  /** What this device may do, and why. */
  standings: {
    mayEverything: 'This device is logged in and may do everything.',
    mayRecord: 'This device is logged in and may record work.',
    tablet: 'This is a paired wall tablet: it may look.',
    thisComputer:
      'No PIN is set: this computer may do everything, and everyone else may only look.',
    network:
      'This device may look, as everyone on the local network may. To change something, log in.',
    networkWithoutPin: 'No PIN is set: changes are taken from the computer itself only.',
    closed: 'Looking needs a log-in here.',
    closedWithoutPin: 'Looking needs a log-in here, and no PIN is set yet.',
  },

  choosePin: {
    title: 'Choose a PIN',
    whyHere:
      'With a PIN, work can be recorded from any phone in the shed. From then on this computer asks for it too.',
    whyCode:
      'The daemon printed a code when it started. It shows that you are the one who runs it.',
    code: 'Set-up code',
    codeHint: 'The daemon printed it when it started; it looks like 7KQ2-9WHD-4TXM',
    current: 'Current PIN',
    fresh: 'New PIN',
    freshHint: 'Six figures or letters at least, no row like 123456',
    set: 'Set the PIN',
    setSecond: 'Set the second PIN',
    /** `command` is typed as it stands. */
    forgotten: (command: Node) => [
      'Who has forgotten the PIN sets a new one on the computer itself, with ',
      command,
      '.',
    ],
  },
  changePin: {
    title: 'Change the PIN',
    about: 'Whoever was logged in by the old one logs in again.',
  },
  secondPin: {
    title: 'A second PIN',
    isSet: 'For those who record work and should leave settings and devices alone. One is set.',
    isNotSet: 'For those who record work and should leave settings and devices alone. None is set.',
    remove: 'Remove the second PIN',
  },

  pairing: {
    title: 'Make this a wall tablet',
    about: 'A paired tablet may look for as long as nobody unpairs it, and change nothing.',
    code: 'Pairing code',
    codeHint: 'Made under Access on a device that is logged in; good for ten minutes',
    pair: 'Pair this device',
    /** On the device that lets the tablet in. */
    letIn: 'Let a wall tablet in',
    name: 'What the tablet is called',
    makeCode: 'Make a pairing code',
    /** The code itself stands below. `until` is a date and a time. */
    typeThere: (name: string, until: string) =>
      `On the tablet open this page, “Access”, and type for ${name}, until ${until}:`,
  },

  thisDevice: {
    title: 'This device',
    called: (name: string) => `It is called “${name}”, and stays logged in while it is used.`,
    logOut: 'Log out',
  },
  devices: {
    title: 'Devices',
    kinds: { 'log-in': 'Logged in', tablet: 'Wall tablet' } satisfies Record<
      Device['kind'],
      string
    >,
    /** After what kind of device it is: “Wall tablet, may look”. */
    roles: {
      look: 'may look',
      operate: 'may record work',
      own: 'may do everything',
    } satisfies Record<Role, string>,
    state: (kind: string, may: string) => `${kind}, ${may}`,
    /** `ago` is “4 minutes ago” or “just now”. */
    stateSeen: (kind: string, may: string, ago: string) => `${kind}, ${may}, seen ${ago}`,
    /** Behind the name of the device that shows the list. */
    thisOne: (name: string) => `${name} (this device)`,
    /** On the button of one device; the second is read aloud. */
    end: { 'log-in': 'Log out', tablet: 'Unpair' } satisfies Record<Device['kind'], string>,
    endNamed: {
      'log-in': (name: string) => `Log out ${name}`,
      tablet: (name: string) => `Unpair ${name}`,
    } satisfies Record<Device['kind'], (name: string) => string>,
    endAll: 'Log out everywhere',
    /** Asked once more before it is done. */
    endAllSurely: 'Log out everywhere, here too',
    leave: 'Leave it',
  },

  /** Who may publish readings at the MQTT broker, which carries them from sensors to the daemon. */
  broker: {
    title: 'Who may publish readings',
    external: 'The sensors are at another broker: names and passwords are set there.',
    modes: {
      open: 'Open: anyone on the network may publish readings. That is how it is tried out.',
      pairing: 'Pairing: anyone may still publish, while the sensors are given their names.',
      closed: 'Closed: only who has a name and a password may publish, and only as itself.',
    } satisfies Record<MqttMode, string>,
    lookAgain: 'Look again',
    noSensor: 'No sensor has sent anything in the last 30 days.',
    pairings: {
      paired: 'Paired: publishes under its name',
      waiting: 'Waiting: has a password that it does not use yet',
      unpaired: 'Not paired yet',
      mixed: 'Something still publishes as this sensor without the password',
    } satisfies Record<PairingSensor['pairing'], string>,
    /** `state` is one of the above. */
    pairingSent: (state: string, ago: string) => `${state}; sent ${ago}`,
    makePassword: 'Make a password',
    makePasswordFor: (sensor: string) => `Make a password for ${sensor}`,
    wrongPassword: (name: Node, ago: string) => [name, ` came with a wrong password, ${ago}.`],
    stray: (name: Node, topic: Node, ago: string) => [
      name,
      ' sent to ',
      topic,
      `, which is not its own, ${ago}.`,
    ],

    given: (count: string) => `Names that were given: ${count}`,
    /** What a name is for; `sensors` is a list of ids. */
    uses: {
      node: (sensors: string) => `publishes as ${sensors}`,
      listener: () => 'only listens',
      forecaster: () => 'sends a forecast',
    } satisfies Record<MqttLogin['kind'], (sensors: string) => string>,
    notUsedYet: (use: string) => `${use}; not used yet`,
    used: (use: string, ago: string) => `${use}; used ${ago}`,
    takeAway: 'Take away',
    takeAwayNamed: (name: string) => `Take ${name} away`,
    /** Asked once more before it is done. */
    takeAwaySurely: 'Take it away for good',
    takeAwaySurelyNamed: (name: string) => `Take ${name} away for good`,

    another: 'Another name: a gateway, a display, a forecast',
    does: 'What it does',
    kinds: {
      node: 'Sends readings',
      listener: 'Only listens',
      forecaster: 'Sends a forecast',
    } satisfies Record<MqttLogin['kind'], string>,
    userName: 'User name',
    userNameHint: 'Letters, figures, dot, dash and underscore',
    sendsFor: 'Sensors that it sends for',
    sendsForHint: 'Their ids, with commas between',
    makeLogin: 'Make a name and a password',
    shownOnce:
      'Put this into the node now. It is shown this once; who loses it takes the name away and makes a new one.',
    password: 'Password',

    closeTitle: 'Close it',
    nothingFallsSilent: 'Every sensor in use publishes under its name: nothing falls silent.',
    someFallSilent:
      'These would no longer be heard. Pair them first, or tick those that may fall silent.',
    mayFallSilent: (sensor: string) => `${sensor} may fall silent`,
    /** `clients` is a list of names of programs; `more` is how many there is no room for. */
    listenersSilent: (clients: string) =>
      `These listeners without a name may hear nothing more: ${clients}`,
    listenersSilentMore: (clients: string, more: number) =>
      `These listeners without a name may hear nothing more: ${clients} and ${more} more`,
    close: 'Close the broker',
    open: 'Open it again for everyone',
  },
};
