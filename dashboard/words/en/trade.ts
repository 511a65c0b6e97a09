import type { Batch } from '../../../daemon/contract/batch.ts';
import type { Node } from '../node.ts';

type Timber = Batch['timber'];

/** The looks of a painter's week: the morning round, a coat in steps, going up. */
export const trade = {
  /** What was said of the timber, a few words a part, side by side with commas. */
  timber: {
    before: {
      new: 'new',
      weathered: 'weathered grey',
      painted: 'painted before',
      unknown: 'nobody knows what was on it before',
    } satisfies Record<NonNullable<Timber['stateBefore']>, string>,
    delivered: (moment: string) => `delivered ${moment}`,
    stored: {
      indoors: 'stored indoors',
      'under-roof': 'stored under a roof',
      wrapped: 'stored wrapped',
      'bare-outdoors': 'stored bare outdoors',
    } satisfies Record<NonNullable<Timber['storedHow']>, string>,
    support: {
      points: 'on points',
      hung: 'hung',
      stickers: 'on stickers, to turn',
    } satisfies Record<NonNullable<Timber['support']>, string>,
    knots: {
      'not-looked': 'knots not looked at',
      few: 'few knots',
      many: 'many knots',
      resinous: 'resin runs',
    } satisfies Record<NonNullable<Timber['knots']>, string>,
  },
  /** What a touch test changed about one job. `was` and `is` are words of the wall: “Wait”, “Feel it”. */
  change: {
    nothing: 'It was expected so: nothing changed.',
    verdict: (job: string, was: string, is: string) => `To ${job}: “${was}” became “${is}”.`,
    verdictLikely: (job: string, was: string, is: string, when: string) =>
      `To ${job}: “${was}” became “${is}”, likely ${when}.`,
    moved: (job: string, was: string, is: string) => `Ready ${job} moved from ${was} to ${is}.`,
    likelier: (job: string) => `Ready ${job}: a little likelier than before.`,
    lessLikely: (job: string) => `Ready ${job}: a little less likely than before.`,
    chance: (job: string, was: string, is: string) =>
      `Ready ${job}: the chance went from ${was} to ${is} in 10.`,
  },
  /** Where boards are believed to lie, as a sentence. */
  lies: {
    fromTheStart: (place: string) => `The boards lie at ${place} from the start.`,
    today: (place: string) => `The boards lie at ${place} since today.`,
    yesterday: (place: string) => `The boards lie at ${place} since yesterday.`,
    since: (place: string, day: string) => `The boards lie at ${place} since ${day}.`,
  },
  stillThere: 'Still there?',
  moved: 'No, they were moved',
  round: {
    title: 'The morning round',
    changed: 'Recorded. What it changed:',
    answered: 'Felt for today. One question a day is enough.',
    nothing: 'Nothing to feel this morning: no answer would change what is done today.',
    howSandingWent: (batch: string) => `How did sanding “${batch}” go?`,
    /** “Rack north: May they be stacked close?” */
    question: (batch: string, question: string) => `${batch}: ${question}`,
    sayWhere: 'No, say where',
    clogged: 'It clogged',
    dusted: 'It dusted',
    chosen: (odds: string, link: Node) => [
      `Chance so far: ${odds}. This rack was chosen because an answer changes most here. Felt on a board instead of the offcut? `,
      link,
      '.',
    ],
    recordThere: 'Record it there',
    /** `job` as in “ready to stack”. */
    passed: (job: string) => `Recorded: ready ${job}.`,
    failed: (job: string) => `Recorded: not yet ready ${job}.`,
    racks: {
      title: 'Rack by rack',
      none: 'No boards lie anywhere: nothing to go round for.',
      /** What to do with the boards of a batch now; `job` as in “to stack”. */
      leave: (job: string) => `Leave it: not yet ready ${job}`,
      feel: (job: string) => `Feel it: perhaps ready ${job}`,
      goOn: (job: string) => `Go on: ready ${job}`,
      held: (job: string) => `Held: cured enough ${job}, but not now`,
      bare: 'Bare: the first coat is still to come',
      done: 'Done: all coats are on',
      noData: 'Leave it: nothing tells how the air is here',
      /** What is wrong with the air, each a short line. */
      cold: (temperature: string) => `Cold: ${temperature}, it hardly cures.`,
      damp: (humidity: string) => `Damp: ${humidity}.`,
      stuffy: 'Stuffy: the air hardly changes.',
      silent: 'Silent: no fresh reading.',
      fine: 'Nothing wrong with the air.',
    },
    week: {
      title: 'The next half-day and the week',
      how: 'Each box is half a day. Striped: it may be ready then. Full: as likely as not by then.',
      /** The strip as a sentence. */
      likely: (job: string, when: Node) => [`Ready ${job}: likely `, when, '.'],
      now: (job: string) => `Ready ${job}: feel for it now.`,
      notThisWeek: (job: string) => `Ready ${job}: hardly within the week.`,
    },
  },
  coating: {
    allOn: 'All coats of the plan are on.',
    begin: 'Begin this coat',
    /** “Ochre 5, ochre” */
    tin: (name: string, colour: string) => `${name}, ${colour}`,
    begun: (moment: Node) => ['Begun ', moment],
    toDo: 'to do',
    learns: 'The plan learns from it how far it goes',
    lastBoard: 'The last board is done',
    open: (steps: string) => `Not ticked yet: ${steps}.`,
    giveUp: 'It was not put on',
    giveUpSure: 'Yes, give this coat up',
  },
  look: {
    now: 'Look again now',
    at: (when: string) => `Look again ${when}`,
  },
  mounting: {
    title: 'Going up',
    upSince: (moment: Node) => ['Up since ', moment, '.'],
    shade: 'Later coats on the wall: follow the shade, stop before evening dew.',
    fromTheGround: 'Tick and record from the ground, with both feet on it: never from a ladder.',
  },
};
