import { describe, expect, it } from 'vitest';
import { queryOfSheet, sheetQuery } from '../../dashboard/pot/pot-query.ts';
import { pageOf, printAddress } from '../../dashboard/router.ts';

describe('the address of a strip or label', () => {
  it('names the coat and all that its marks depend on', () => {
    const asked = {
      batchId: '0190a000-0000-7000-8000-000000000100',
      ...{ coat: 0, potDiameterMm: 200, potTopDiameterMm: 220, potHeightMm: 250 },
      ...{ fillPercent: 70, lossPercent: 5, paintDensityKgPerL: 1.6 },
    };
    const page = pageOf(printAddress('strip', sheetQuery(asked)));
    if (page.kind !== 'print') throw new Error('no sheet');
    const read = queryOfSheet(page.given);
    expect(
      Object.fromEntries(Object.entries(read).map(([name, value]) => [name, String(value)])),
    ).toEqual(
      Object.fromEntries(Object.entries(asked).map(([name, value]) => [name, String(value)])),
    );
  });

  it('leaves out what was not said, and what no sheet asks for', () => {
    expect(sheetQuery({ areaM2: 12, coat: undefined, havePaintL: 3 })).toEqual({ areaM2: '12' });
    expect(queryOfSheet(new URLSearchParams('attic=1&coat=2'))).toEqual({ coat: '2' });
  });
});
