import { describe, expect, it } from 'vitest';
import { brushHolds } from '../../daemon/rules/brush-air.ts';
import { faultReason } from '../../daemon/rules/fault/fault-reason.ts';
import { lockUpLines, lockUpWords } from '../../daemon/rules/lock-up.ts';
import { ragsCaution, wantedNotices } from '../../daemon/rules/notice.ts';
import { solventCautions } from '../../daemon/rules/solvent-air.ts';
import { builtInName } from '../../daemon/wording/built-in-name.ts';
import { sentence } from '../../daemon/wording/english.ts';
import { siteVoice } from '../../daemon/wording/voice.ts';

/*
 * Programs outside read the English texts: these stand here letter by letter as they were sent
 * before sentences had values.
 */

const hour = 3_600_000;

describe('the English text of a sentence', () => {
  it('of what can hurt', () => {
    expect(ragsCaution().text).toBe(
      'Oily rags heat up by themselves and can catch fire: under water in a lidded metal can, or flat in a single layer outdoors, away from buildings, until stiff and then into that can. Never balled, in a bag, in a car or indoors. Tick it on the lock-up list. Local rules come first.',
    );
    const view = {
      ...{ unplacedSensors: [], batches: [] },
      places: [{ id: 'p', name: 'Rack 1', hasSensor: true, stale: false, at: 1, insideC: 51.4 }],
      vapour: [{ roomId: 'r', roomName: 'Shed', nowPpm: 312, limitPpm: 20 }],
    };
    expect(wantedNotices(view).map(({ text }) => text)).toEqual([
      'Shed: about 310 ppm of turpentine in the air by estimate, more near the boards; the limit here is 20 ppm. Open up, stay out, no flame, no spark, no glowing heater. This is no gas alarm.',
      'Rack 1 is at 51 °C. Look from outside first: smoke, the heater, oily rags that heat up by themselves. Where there is smoke stay out and call the fire service. This is no fire alarm.',
    ]);
    const [leaves, estimate] = solventCautions({
      mixture: { paint: 35, rawLinseedOil: 50, turpentine: 15 },
      ...{ mixedL: 6, hoursSince: 0, volumeM3: 90, airChangesPerHour: null, localLimitPpm: null },
    });
    expect(leaves?.text).toBe(
      'About 0.9 L of turpentine leave this coat, most of it in the first day. Change the air; no flame, no glowing heater, no sparks. The product’s sheet and local rules come first.',
    );
    expect(estimate?.text).toMatch(
      /^Estimate for 90 m³ if the air is changed only 0\.5 times an hour: 0 ppm now, \d+ ppm at the most; the lowest published limit is 20 ppm\. Near the boards and low down it is more\. This is no gas alarm\.$/,
    );
    expect(lockUpWords(lockUpLines[0] ?? 'rags')).toMatchObject({
      title: 'Rags, gloves, paper, strainings, oily dust',
      text: 'They heat up by themselves and can set the shed alight hours later. Soak them and put them in a lidded metal can filled with water; or lay them flat in a single layer outdoors, away from buildings, until they are stiff, and then into that can. Never balled, in a bag, in a car or indoors.',
    });
  });

  it('of what forbids brushing, with measured figures and limits as they were set', () => {
    const air = { tempC: 4.06, rhPercent: 93.7, stale: false };
    expect(brushHolds(air).map(({ code, text }) => `${code}: ${text}`)).toEqual([
      'air-cold: Too cold to brush: 4.1 °C, at least 5 °C.',
      'air-damp: Too damp to brush: 94 % humidity, at most 85 %.',
      'air-near-dew: Too near the dew point to brush: 0.9 K above it, at least 3 K.',
    ]);
  });

  it('of a fault, with what was seen, also where only its text was kept', () => {
    const seen = sentence('seen-stuck', { value: 21.37, quantity: 'air-temperature' });
    const fault = {
      ...{ id: 'f', sensorKey: 1, quantity: 'air-temperature' as const, kind: 'stuck' as const },
      ...{ fromAt: 0, untilAt: null, says: seen.text },
    };
    const { code, values } = seen;
    for (const told of [{ code, values }, undefined]) {
      const said = faultReason(
        { ...fault, ...(told ? { told } : {}) },
        { id: 's', name: 'North' },
        5 * hour,
      );
      expect(said.code).toBe('sensor-stuck');
      expect(said.text).toBe(
        'Sensor North: stuck for 5 h. It has shown 21.37 all the while. Its readings are not counted since.',
      );
    }
  });

  it('of what is wrong with a request', () => {
    expect(sentence('time-too-early', { at: 0, earliestAt: 946_684_800_000 }).text).toBe(
      'The time 1970-01-01T00:00:00.000Z lies before 2000-01-01T00:00:00.000Z; check the year.',
    );
    const told = { value: 250, quantity: 'air-temperature' as const, low: -60, high: 100 };
    expect(sentence('figure-impossible', told).text).toBe(
      '250 °C is outside of what air temperature can be (-60 to 100 °C).',
    );
  });
});

describe('a name', () => {
  it('that came with the program is a sentence, one that somebody wrote stays', () => {
    expect(builtInName('Primer')).toMatchObject({
      code: 'coat-name',
      values: { variant: 'primer' },
    });
    expect(builtInName('Coat 4')).toMatchObject({ values: { variant: 'number', number: 4 } });
    expect(builtInName('Three coats on sawn boards')).toMatchObject({ code: 'plan-name' });
    const voice = siteVoice('en', 'UTC');
    for (const name of [
      'Primer',
      'Coat 4',
      'Grandmother’s red',
      'Three coats on planed boards, without turpentine',
    ]) {
      expect(voice(builtInName(name))).toBe(name);
    }
  });
});
