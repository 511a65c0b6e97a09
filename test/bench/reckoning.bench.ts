import { bench, describe } from 'vitest';
import { estimateAirChange } from '../../daemon/science/airflow.ts';
import { integrateCure } from '../../daemon/science/cure.ts';
import { segmentEquivalentHours } from '../../daemon/science/cure-rate.ts';
import { fitRequirement } from '../../daemon/science/touch.ts';
import { decodeMessage } from '../../sensors/payload/decode-message.ts';

const minute = 60_000;
const samples = Array.from({ length: 10_000 }, (_, i) => ({
  at: i * minute,
  tempC: 15 + 5 * Math.sin(i / 200),
}));
const nurseSaul = { rate: 'nurse-saul', datumC: 5, maxGapHours: 3 } as const;
const arrhenius = {
  rate: 'arrhenius',
  activationEnergyJPerMol: 50_000,
  referenceC: 20,
  maxGapHours: 3,
} as const;

describe('10,000 readings, one a minute', () => {
  bench('bare loop over the lines, nothing reckoned', () => {
    let sum = 0;
    for (let i = 1; i < samples.length; i++) {
      sum += (samples[i]?.tempC ?? 0) - (samples[i - 1]?.tempC ?? 0);
    }
    if (sum > 1e9) throw new Error('impossible');
  });
  for (const model of [nurseSaul, arrhenius]) {
    bench(`line by line, ${model.rate}`, () => {
      for (let i = 1; i < samples.length; i++) {
        const a = samples[i - 1];
        const b = samples[i];
        if (a && b) segmentEquivalentHours(model, a.at, a.tempC, b.at, b.tempC);
      }
    });
    bench(`integrateCure, ${model.rate}`, () => {
      integrateCure(samples, model);
    });
  }
});

describe('air changes of a room', () => {
  const hour = 3_600_000;
  for (const hours of [12, 24, 48]) {
    let insideGM3 = 9;
    const air = Array.from({ length: hours * 12 }, (_, i) => {
      const outsideGM3 = 8 + 1.5 * Math.sin(i / 48) + Math.sin(i / 16);
      insideGM3 += (outsideGM3 - insideGM3) / 12;
      return { at: (i * hour) / 12, insideGM3: insideGM3 + 0.02 * Math.sin(i * 7), outsideGM3 };
    });
    bench(`fit of ${hours} h at five minutes`, () => {
      estimateAirChange(air);
    });
  }
});

describe('what touch tests teach', () => {
  for (const count of [0, 1, 3, 10, 30]) {
    const tests = Array.from({ length: count }, (_, i) => ({
      failedAt: 700 + 10 * i,
      passedAt: 800 + 10 * i,
    }));
    bench(`fit of ${count} coats`, () => {
      fitRequirement(tests, { p10: 720, p90: 1080 });
    });
  }
});

describe('one message', () => {
  const topic = 'boardcure/shed/sensor/node-1/air-temperature';
  const decode = (text: string) =>
    decodeMessage({ topic, text, byteLength: text.length }, { site: 'shed' }, { now: 1.8e12 });
  bench('JSON.parse alone', () => {
    JSON.parse('{"value":18.4,"time":1790000000000}');
  });
  bench('a plain number', () => {
    decode('18.4');
  });
  bench('JSON with a time', () => {
    decode('{"value":18.4,"time":1790000000000}');
  });
});
