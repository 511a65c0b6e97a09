/** One figure of `GET /metrics`: its name there, its kind, what it tells and what it is split by. */
export interface Metric {
  readonly name: `boardcure_${string}` | `process_${string}`;
  readonly kind: 'counter' | 'gauge' | 'histogram';
  readonly help: string;
  /** What its series are told apart by. */
  readonly labels?: readonly string[];
  /** Upper edges of a histogram, in its unit. */
  readonly edges?: readonly number[];
}

/**
 * Every figure of `GET /metrics`. Names follow OpenMetrics: base units at the end, and `_total` for
 * what is counted up since the start (its samples carry it; the family’s name does not).
 */
export const metrics = {
  build: {
    name: 'boardcure_build_info',
    kind: 'gauge',
    help: 'Always 1; its labels tell the version that runs and the Node it runs on.',
    labels: ['version', 'node'],
  },
  readings: {
    name: 'boardcure_readings_total',
    kind: 'counter',
    help: 'Readings that were new and are on disk.',
  },
  repeated: {
    name: 'boardcure_readings_repeated_total',
    kind: 'counter',
    help: 'Readings that were on disk already.',
  },
  flagged: {
    name: 'boardcure_readings_flagged_total',
    kind: 'counter',
    help: 'Readings whose own time could not be believed, or is not known.',
  },
  dropped: {
    name: 'boardcure_readings_dropped_total',
    kind: 'counter',
    help: 'Readings of retained messages without a time of their own: they are not now.',
  },
  refused: {
    name: 'boardcure_messages_refused_total',
    kind: 'counter',
    help: 'What could not be taken as a reading, by reason; GET /api/v1/refused shows the last ones.',
    labels: ['reason'],
  },
  commitSeconds: {
    name: 'boardcure_commit_duration_seconds',
    kind: 'histogram',
    help: 'How long a group of readings took until it was on disk.',
    edges: [0.002, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 10],
  },
  commitReadings: {
    name: 'boardcure_commit_readings',
    kind: 'histogram',
    help: 'How many readings a group held.',
    edges: [1, 2, 5, 10, 25, 50, 100, 250, 500, 1000],
  },
  waiting: {
    name: 'boardcure_commit_queue_readings',
    kind: 'gauge',
    help: 'Readings that wait to be written; their senders have no acknowledgement yet.',
  },
  lastCommit: {
    name: 'boardcure_last_commit_timestamp_seconds',
    kind: 'gauge',
    help: 'When readings were last written, by the clock of the site; 0 before the first time.',
  },
  diskFull: {
    name: 'boardcure_disk_full',
    kind: 'gauge',
    help: '1 while the disk is full and nothing is acknowledged.',
  },
  connected: {
    name: 'boardcure_broker_connected',
    kind: 'gauge',
    help: '1 while readings can come in over MQTT.',
    labels: ['broker'],
  },
  connections: {
    name: 'boardcure_broker_connections',
    kind: 'gauge',
    help: 'Clients of the embedded broker that are connected.',
  },
  bestEffort: {
    name: 'boardcure_broker_best_effort_total',
    kind: 'counter',
    help: 'Messages at QoS 0 that came to the embedded broker: nobody sends them again.',
  },
  cutOff: {
    name: 'boardcure_broker_cut_off_total',
    kind: 'counter',
    help: 'Connections that the embedded broker ended or refused, by reason.',
    labels: ['reason'],
  },
  ledgerHours: {
    name: 'boardcure_ledger_hours_reckoned_total',
    kind: 'counter',
    help: 'Hours of a place whose cure was reckoned anew from readings: late readings, corrections, starts.',
  },
  settling: {
    name: 'boardcure_ledger_settling',
    kind: 'gauge',
    help: '1 while corrected hours are being written.',
  },
  doubts: {
    name: 'boardcure_doubts',
    kind: 'gauge',
    help: 'Reasons that GET /healthz gives for not being well.',
  },
  clockTrusted: {
    name: 'boardcure_clock_trusted',
    kind: 'gauge',
    help: '1 while the time of the computer is believed.',
  },
  sensors: {
    name: 'boardcure_sensors',
    kind: 'gauge',
    help: 'Sensors that were ever heard.',
  },
  batchesOpen: {
    name: 'boardcure_batches_open',
    kind: 'gauge',
    help: 'Batches that are not closed.',
  },
  noticesOpen: {
    name: 'boardcure_notices_open',
    kind: 'gauge',
    help: 'Notices that hold and were not marked as seen.',
  },
  pages: {
    name: 'boardcure_pages_listening',
    kind: 'gauge',
    help: 'Pages that are kept up to date by server-sent events.',
  },
  responses: {
    name: 'boardcure_http_responses_total',
    kind: 'counter',
    help: 'Answers to HTTP requests, by status.',
    labels: ['status'],
  },
  databaseBytes: {
    name: 'boardcure_database_bytes',
    kind: 'gauge',
    help: 'Size of the database on disk: its file, and its log of what is not in the file yet.',
    labels: ['part'],
  },
  freeBytes: {
    name: 'boardcure_disk_free_bytes',
    kind: 'gauge',
    help: 'Room that is left on the disk of the data folder; none is told while the folder is gone.',
  },
  loopDelay: {
    name: 'boardcure_loop_delay_seconds',
    kind: 'gauge',
    help: 'How late the main loop was since the last look, by share of the moments.',
    labels: ['share'],
  },
  startTime: {
    name: 'process_start_time_seconds',
    kind: 'gauge',
    help: 'When the process began, by the clock of the computer then.',
  },
  cpuSeconds: {
    name: 'process_cpu_seconds_total',
    kind: 'counter',
    help: 'Processor time that was used.',
  },
  residentBytes: {
    name: 'process_resident_memory_bytes',
    kind: 'gauge',
    help: 'Memory that the process holds.',
  },
  heapBytes: {
    name: 'process_heap_bytes',
    kind: 'gauge',
    help: 'Memory that the engine uses for objects.',
  },
  openFiles: {
    name: 'process_open_fds',
    kind: 'gauge',
    help: 'Open files and connections.',
  },
} as const satisfies Record<string, Metric>;

export type MetricName = keyof typeof metrics;
