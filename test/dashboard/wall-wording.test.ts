import { describe, expect, it } from 'vitest';
import { NoticeKind } from '../../daemon/contract/notice.ts';
import { FaultKind } from '../../daemon/contract/sensor-fault.ts';
import { daemonWording, wallWording } from '../../dashboard/words/catalogue.ts';
import { languages } from '../../dashboard/words/language.ts';

describe.each(languages)('what the wall says in %s', (language) => {
  it('is said with the very same sentences as on all other pages', async () => {
    const whole = await daemonWording(language);
    const entries = Object.entries(await wallWording(language));
    const unlike = entries.filter(([code, say]) => whole[code as keyof typeof whole] !== say);
    expect(unlike.map(([code]) => code)).toEqual([]);
    expect(entries.length).toBeLessThan(Object.keys(whole).length / 2);
  });

  it('has every notice, every fault within one, and why a board is held', async () => {
    const codes = Object.keys(await wallWording(language));
    expect(codes).toEqual(expect.arrayContaining(NoticeKind.options));
    expect(codes).toEqual(
      expect.arrayContaining(FaultKind.options.map((kind) => `sensor-${kind}`)),
    );
    // What `daemon/rules/gate-verdict.ts` puts first where a verdict is to hold.
    const held = ['too-cold-to-cure', 'no-readings', 'air-cold', 'air-damp', 'air-near-dew'];
    expect(codes).toEqual(expect.arrayContaining([...held, 'was-wet', 'as-written', 'disk-full']));
  });
});
