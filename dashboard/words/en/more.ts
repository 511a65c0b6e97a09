/** The doors that are seldom opened. */
export const more = {
  title: 'More',
  doors: {
    records: { name: 'Records', says: 'Everything that was recorded, of all batches, to search' },
    season: { name: 'The seasons', says: 'What became of the coats so far' },
    settings: { name: 'Settings', says: 'What is set, where it came from, and how to change it' },
    topics: {
      name: 'Sensors of other makes',
      says: 'Messages that nobody knows yet, and the rules that turn them into readings',
    },
    firstRun: {
      name: 'First steps',
      says: 'The guided way through the set-up, and a simulated shed to try things on',
    },
    cautions: { name: 'Cautions', says: 'Rags, vapour, dust, lead and heaters' },
    api: { name: 'API', says: 'Every route, for whoever writes programs' },
  },
};
