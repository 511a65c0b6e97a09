import type { Readings } from './http/ports.ts';
import type { SiteView } from './http/site-view.ts';
import { coatChart } from './monitor/batch-chart.ts';
import type { Monitor } from './monitor/monitor.ts';
import { noticeChannels } from './notice-channels.ts';
import type { OpenSite } from './open-site.ts';
import type { Settings } from './settings/schema.ts';

interface ShownParts {
  settings: Settings;
  reader: OpenSite['reader'];
  monitor: Monitor;
  /** The model that verdicts go by. */
  ruling: OpenSite['models']['ruling'];
}

/** What the server shows of a site: what the monitor knows, and what only the store keeps. */
export function shownOfSite({ settings, reader, monitor, ruling }: ShownParts): SiteView {
  return {
    facts: monitor.facts,
    air: monitor.air,
    wood: monitor.wood,
    places: monitor.overview,
    batch: monitor.assess.batch,
    summary: monitor.assess.summary,
    coat: monitor.assess.coat,
    touchTest: monitor.assess.touchTest,
    move: monitor.assess.move,
    trade: monitor.trade,
    morningRound: monitor.morningRound,
    chart(batchId, points, now) {
      const facts = monitor.facts();
      const coat = facts.coats.get(batchId)?.at(-1);
      const none = { coatId: null, at: [], tempC: [], rhPercent: [], degreeHours: [] };
      const chart = coat ? coatChart(facts, monitor, ruling, coat, now, points) : none;
      return { batchId, ...chart };
    },
    curves: monitor.curves,
    fitToBrush: monitor.fitToBrush,
    lockUp: monitor.lockUp,
    noticeChannels: () => noticeChannels(settings, reader.channelTallies()),
    notices: reader.notices,
    planAhead: monitor.ahead,
    whatHelps: monitor.whatHelps,
    report: monitor.report,
    season: monitor.season,
    photos: reader.photosOf,
    photo: reader.photo,
    calibrationHistory: reader.calibrationHistory,
  };
}

/** What the server shows of single readings. */
export function shownReadings(reader: OpenSite['reader'], monitor: Monitor): Readings {
  return {
    readingsBetween: reader.readingsBetween,
    readingOutline: reader.readingOutline,
    newestReading: (sensorKey, quantity) =>
      reader.readingBefore(sensorKey, quantity, Number.MAX_SAFE_INTEGER, 0),
    corrected: monitor.corrected,
    refused: reader.refused,
  };
}
