import { describe, expect, it } from 'vitest';
import { brushWords } from '../../daemon/rules/fit-to-brush.ts';
import { type MorningView, morningDigest } from '../../daemon/rules/morning-digest.ts';
import { siteVoice } from '../../daemon/wording/voice.ts';

/** A sentence kept from before sentences were. */
const asWritten = (text: string) => ({ code: 'old', text });

const now = Date.UTC(2026, 4, 20, 4, 30);
const view: MorningView = {
  batches: [
    {
      ...{ name: 'South gable', placeName: 'Rack 1', coatName: 'Primer', job: 'recoat' },
      ...{ verdict: 'test', likelyAt: null, because: null },
    },
    {
      ...{ name: 'North gable', placeName: 'Rack 2', coatName: 'Primer', job: 'recoat' },
      ...{ verdict: 'wait', likelyAt: now + 30 * 3_600_000, because: null },
    },
  ],
  wrong: [asWritten('Rack 2 has been silent for hours.')],
  brushing: [
    {
      ...{ placeName: 'Shed', words: brushWords('good'), stopBy: now + 11 * 3_600_000 },
      ...{ stopBecause: asWritten('From 19:30 on rain is forecast.'), against: [] },
    },
  ],
};

describe('the morning digest', () => {
  const { title, text } = morningDigest(
    view,
    now,
    'Europe/Stockholm',
    siteVoice('en', 'Europe/Stockholm'),
  );
  it('says in its title what the day asks for', () => {
    expect(title).toBe('Morning of 2026-05-20: 1 to feel, 0 ready, 1 open');
  });
  it('names racks, what to feel and how, what is wrong, and when to put the brush down', () => {
    expect(text).toBe(
      [
        'Racks and walls',
        '- South gable at Rack 1, primer: worth a touch test for recoating.',
        '- North gable at Rack 2, primer: recoating likely 2026-05-21 12:30.',
        '',
        'Feel today',
        '- South gable: Press a thumbnail in: no mark stays, and a cloth takes no colour.',
        '',
        'What is wrong',
        '- Rack 2 has been silent for hours.',
        '',
        'To brush',
        '- Shed: Fit to brush. Stop by 17:30. From 19:30 on rain is forecast.',
      ].join('\n'),
    );
  });
  it('says nothing where there is nothing, rather than leave a line out', () => {
    const nothing = { batches: [], wrong: [], brushing: [] };
    const empty = morningDigest(nothing, now, 'UTC', siteVoice('en', 'UTC'));
    expect(empty.text.match(/- nothing/g)).toHaveLength(4);
  });
});
