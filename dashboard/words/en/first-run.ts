import type { Node } from '../node.ts';
import { plural } from '../plural.ts';

/** From nothing to the first verdict, one thing a screen. */
export const firstRun = {
  /** Above the title of each screen. */
  step: (at: string, of: string) => `Step ${at} of ${of}`,
  back: 'Back',
  goOn: 'Go on',
  later: 'Not now',
  leave: 'Leave it here. What is done stays, and it goes on from there.',
  reader: {
    title: 'How do you read?',
    says: 'Language and units of this device. Every other phone or screen chooses its own.',
  },
  access: {
    title: 'A PIN for changes',
    says: 'Everybody on this network may look. Who wants to change something is asked for the PIN.',
    here: 'You are at the computer itself, so you may go on without one. From a phone nothing can be recorded until there is a PIN.',
    code: 'You are not at the computer itself. It printed a set-up code when it was started: that shows that it is yours.',
    set: 'There is a PIN already. Log in, and go on.',
    done: 'There is a PIN, and this device may change things.',
  },
  site: {
    title: 'What is this place called?',
    says: 'The name stands at the head of every page. The sensors’ topics stay as they are.',
    name: 'Name',
    nameHint: 'For example Barn by the river',
    zone: (zone: Node, time: string) => [
      'Days and hours are those of ',
      zone,
      `, where it is ${time} now.`,
    ],
    otherZone: 'That is not right?',
    /** Before the line for the settings file. */
    zoneHow:
      'The time zone is a setting. Put this line at the top of the settings file, with the zone you want, and start the daemon again:',
    keep: 'Keep the name',
  },
  room: {
    title: 'The room',
    says: 'Where the boards cure. Its size tells how quickly solvent vapour gathers; it can be left out.',
    usualName: 'Paint room',
    make: 'Make the room',
    there: (names: string) => `There already: ${names}.`,
    otherKind: 'The boards lie outdoors or on a wall',
  },
  rack: {
    title: 'The racks in it',
    says: 'One board on the wall for each. Make as many as there are; how much lies on one can be said later too.',
    usualName: (number: string) => `Rack ${number}`,
    name: 'Name',
    make: 'Make the rack',
    there: (names: string) => `There already: ${names}.`,
  },
  sensor: {
    title: 'A sensor',
    says: 'It shows up here by itself with its first reading. Then say where it hangs.',
    listening: 'Listening …',
    heard: (count: number) =>
      plural('en', count, { one: '# sensor is heard.', other: '# sensors are heard.' }),
    /** Over one button for each place. */
    hangsWhere: (sensor: string) => `Where does ${sensor} hang?`,
    here: (place: string) => `At ${place}`,
    hangs: (sensor: string, place: string) => `${sensor} hangs at ${place}.`,
    unknown: (count: number) =>
      plural('en', count, {
        one: 'Something is heard on # topic that is not understood yet:',
        other: 'Something is heard on # topics that are not understood yet:',
      }),
    teach: (topic: Node) => ['Say what it means: ', topic],
    how: 'What to put into a sensor node',
    address: 'Address of the broker',
    port: 'Port',
    topic: 'Topic, with a name of your own in the middle',
    payload: 'Message: the figure alone, in °C',
    otherTopics:
      'For humidity the topic ends in relative-humidity, and the figure is in %. Other names and forms are found too, and can be taught.',
    external: 'The sensors send to another broker, which this computer reads from.',
    tryIt: 'To try it from a computer with an MQTT program:',
  },
  simulated: {
    title: 'No sensors yet?',
    says: 'Look at a simulated shed first: four racks, invented boards and weather, a day in about a minute and a half. It runs beside this one with data of its own, and nothing of it stays.',
    start: 'Try the simulated shed',
    starting: 'The simulated shed is being built: four days of it in a few seconds.',
    open: 'Open the simulated shed',
    runs: 'It runs until you end it, at most for two hours.',
    stop: 'End it and remove what it made',
    failed: 'The simulated shed ended by itself. What it said last:',
  },
  batch: {
    title: 'The boards',
    says: 'What is coated together is one batch. The coating plan goes by the surface.',
    there: (names: string) => `There already: ${names}.`,
  },
  coat: {
    title: 'The first coat',
    says: (batch: string, coat: string) => `${batch}: ${coat}. The clock runs from the last board.`,
    mixture: (mixture: string, faces: string) => `${mixture}; ${faces}.`,
    done: 'The last board was done',
    record: 'Record this coat',
    ragsSeen: 'The rags are seen to',
  },
  verdict: {
    title: 'The first verdict',
    says: (batch: string) =>
      `This is what the wall says of ${batch} from now on. It changes by itself.`,
    noBatch: 'There is no batch with a coat yet.',
    noAir:
      'No sensor tells how the air is there, so nothing can be said yet. As soon as one is placed, the verdict stands here.',
    next: 'What comes next',
    toTheWall: 'See the wall; it is made for a tablet in the shed',
    toTheBatch: 'See the batch: when it may be turned, stacked, mounted',
    toTheRest: 'Set up more: racks, sensors, plans, tins',
    toTheCard: 'Print a card for the rack',
  },
};
