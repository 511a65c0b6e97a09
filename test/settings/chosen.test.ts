import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { rename } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { lookAtSettings } from '../../daemon/command/doctor-settings.ts';
import { BoardcureError } from '../../daemon/contract/problem.ts';
import { SettingList, type SettingWish } from '../../daemon/contract/setting.ts';
import { chosenFileIn, readChosen, writeChosen } from '../../daemon/settings/chosen-file.ts';
import { settingFields } from '../../daemon/settings/fields.ts';
import { loadSettings, readGround } from '../../daemon/settings/load.ts';
import { standingSettings } from '../../daemon/settings/standing.ts';

vi.mock('node:fs/promises', { spy: true });

let cwd: string;
let data: string;
beforeEach(() => {
  cwd = mkdtempSync(join(tmpdir(), 'boardcure-chosen-'));
  data = join(cwd, 'data');
});
afterEach(() => {
  vi.restoreAllMocks();
  rmSync(cwd, { recursive: true, force: true });
});

const at = '2026-05-20T08:00:00.000Z';

/** A daemon’s settings with a file, flags and variables; what it reads can be changed meanwhile. */
function standing(text = '', args: string[] = [], env: Record<string, string> = {}) {
  const file = (now: string) => writeFileSync(join(cwd, 'boardcure.toml'), now);
  file(text);
  const source = { args: ['--config', 'boardcure.toml', ...args], env, cwd };
  const open = () => standingSettings(() => readGround(source));
  return { ...open(), open, file, load: () => loadSettings(source) };
}

type Standing = ReturnType<typeof standing>;

const choose = ({ choose }: Pick<Standing, 'choose'>, settings: SettingWish['settings']) =>
  choose({ settings }, at, 'Phone');

const setting = ({ list }: Pick<Standing, 'list'>, name: string) => {
  const found = list().settings.find((one) => one.name === name);
  if (!found) throw new Error(`${name} is not listed`);
  return found;
};

async function refused(act: Promise<unknown>): Promise<BoardcureError> {
  const cause = await act.then(
    () => null,
    (cause) => cause,
  );
  if (cause instanceof BoardcureError) return cause;
  throw new Error('This should have been refused.', { cause });
}

describe('what is chosen on the page', () => {
  it('lies over the file and under environment and flags', async () => {
    const site = standing('[cure]\nreadyAt = 0.8\ndatumC = 4\n', [], { BOARDCURE_LOG: 'warn' });
    await choose(site, { 'cure.readyAt': 0.95 });
    expect(site.settings.cure.readyAt).toBe(0.95);
    expect(setting(site, 'cure.readyAt')).toMatchObject({
      ...{ value: 0.95, from: 'chosen', source: 'Phone', chosenAt: at, isChosen: true },
      ...{ otherwise: 0.8, otherwiseFrom: 'file', changes: 'here' },
    });
    expect(setting(site, 'cure.datumC')).toMatchObject({ from: 'file', isChosen: false });
    expect(setting(site, 'log.level')).toMatchObject({ from: 'environment', changes: 'at-start' });
    expect(site.load().cure).toMatchObject({ readyAt: 0.95, datumC: 4 });
    expect(SettingList.safeParse(site.list()).error).toBeUndefined();
  });

  it('goes back to what the file says, or the default', async () => {
    const site = standing('[cure]\nreadyAt = 0.8\n');
    await choose(site, { 'cure.readyAt': 0.95, 'cure.boardSpread': 0.1 });
    await choose(site, { 'cure.readyAt': null, 'cure.boardSpread': null });
    expect(site.settings.cure).toMatchObject({ readyAt: 0.8, boardSpread: 0 });
    expect(setting(site, 'cure.readyAt')).toMatchObject({ from: 'file', isChosen: false });
    expect(readChosen(chosenFileIn(data)).entries).toEqual([]);
  });

  it('can be nothing at all where a setting may be left out, and stays so', async () => {
    const site = standing();
    expect(site.settings.notices.digestAt).toBe('06:30');
    await site.choose({ settings: {}, nothing: ['notices.digestAt'] }, at, null);
    expect(site.open().settings.notices.digestAt).toBeNull();
    const fault = await refused(site.choose({ settings: {}, nothing: ['cure.readyAt'] }, at, null));
    expect(fault).toMatchObject({ code: 'BC_REQUEST_INVALID', pointer: '/nothing/0' });
  });

  it('holds at once, or waits for the next start and holds then', async () => {
    const site = standing();
    await choose(site, { 'cure.maxGapHours': 6, 'work.days': ['mon', 'sat'] });
    expect(site.settings.cure.maxGapHours).toBe(3);
    expect(site.waiting()).toEqual(['cure.maxGapHours', 'work.days']);
    expect(setting(site, 'cure.maxGapHours')).toMatchObject({
      ...{ waits: true, value: 3, from: 'default', next: 6, isChosen: true },
    });
    const anew = site.open();
    expect(anew.settings.cure.maxGapHours).toBe(6);
    expect(anew.settings.work.days).toEqual(['mon', 'sat']);
    expect(setting(anew, 'cure.maxGapHours')).toMatchObject({ waits: false, from: 'chosen' });
  });

  it('is not lost where somebody wrote into its file meanwhile', async () => {
    const site = standing();
    await writeChosen(chosenFileIn(data), [{ name: 'cure.testAt', value: 0.6, at, by: null }]);
    await choose(site, { 'cure.readyAt': 0.95 });
    expect(site.settings.cure).toMatchObject({ testAt: 0.6, readyAt: 0.95 });
  });

  it('keeps the choices of two at once', async () => {
    const site = standing();
    await Promise.all([
      choose(site, { 'cure.readyAt': 0.95 }),
      choose(site, { 'cure.testAt': 0.6 }),
      choose(site, { 'trade.stockLengthsMm': [3000, 4200.5] }),
    ]);
    expect(site.open().settings.cure).toMatchObject({ readyAt: 0.95, testAt: 0.6 });
    expect(site.changes()).toBe(3);
  });
});

describe('what is refused', () => {
  const file = () => readFileSync(chosenFileIn(data), 'utf8');

  it('points at its field and leaves everything as it was', async () => {
    const site = standing();
    await choose(site, { 'cure.boardSpread': 0.1 });
    const before = file();
    const fault = await refused(
      choose(site, { 'cure.boardSpread': 0.2, 'cure.readyAt': 2, 'trade.stockLengthsMm': [1, -1] }),
    );
    expect(fault.code).toBe('BC_REQUEST_INVALID');
    expect(fault.faults).toMatchObject([
      { pointer: '/settings/cure.readyAt', detailSaid: { values: { variant: 'too-big' } } },
      { pointer: '/settings/trade.stockLengthsMm/1' },
    ]);
    expect(site.settings.cure.boardSpread).toBe(0.1);
    expect(file()).toBe(before);
  });

  it('may be what does not go with another setting; together they may', async () => {
    const site = standing('[cure]\ntestAt = 0.7\n');
    const fault = await refused(choose(site, { 'cure.readyAt': 0.6 }));
    expect(fault.faults).toMatchObject([
      {
        pointer: '/settings/cure.readyAt',
        detailSaid: {
          code: 'field-fault',
          values: { variant: 'must-rise', names: ['cure.testAt', 'cure.readyAt'] },
        },
      },
    ]);
    await choose(site, { 'cure.readyAt': 0.6, 'cure.testAt': 0.55 });
    expect(site.settings.cure).toMatchObject({ readyAt: 0.6, testAt: 0.55 });
    const cold = await refused(choose(site, { 'application.coldestC': 12 }));
    expect(cold.pointer).toBe('/settings/application.coldestC');
  });

  it.each([
    ['http.port', 1],
    ['notices.webhook.secret', 'a-key-of-some-length'],
    ['notices.webhook.url', 'https://elsewhere.example'],
    ['backup.folder', '/'],
    ['access.look', 'open'],
    ['storage.readingDays', 400],
  ] as const)('is %s, which stays in the file', async (name, value) => {
    const fault = await refused(choose(standing(), { [name]: value }));
    expect(fault).toMatchObject({ code: 'BC_SETTING_FIXED', pointer: `/settings/${name}` });
    expect(existsSync(chosenFileIn(data))).toBe(false);
  });

  it('is what a variable or flag gave, and it says which', async () => {
    const site = standing('', [], { BOARDCURE_LOG: 'warn' });
    const fault = await refused(choose(site, { 'log.level': 'debug' }));
    expect(fault.code).toBe('BC_SETTING_FIXED');
    expect(fault.said?.text).toContain('BOARDCURE_LOG');
  });

  it.each(['cure.nothing', 'cure', '__proto__', 'constructor.name'])(
    'is what is no setting: %s',
    async (name) => {
      const asked = Object.fromEntries([[name, 1]]);
      const fault = await refused(choose(standing(), asked));
      expect(fault).toMatchObject({ code: 'BC_REQUEST_INVALID', pointer: `/settings/${name}` });
      expect(({} as Record<string, unknown>).name).toBeUndefined();
    },
  );

  it('is a request that names none', async () => {
    expect((await refused(choose(standing(), {}))).code).toBe('BC_REQUEST_INVALID');
  });
});

describe('a start with choices that do not fit', () => {
  const kept = (...lines: string[]) =>
    writeChosen(
      chosenFileIn(data),
      lines.map((line) => {
        const [name = '', value = ''] = line.split('=');
        return { name, value: JSON.parse(value), at, by: null };
      }),
    );

  it('goes without what is unknown, of the file alone or out of its limits, and names it', async () => {
    await kept(
      'cure.old=1',
      'http.port=9',
      'cure.readyAt=7',
      'cure.boardSpread=0.2',
      'work.days="x"',
    );
    const site = standing();
    expect(site.settings.cure).toMatchObject({ readyAt: 0.9, boardSpread: 0.2 });
    expect(site.settings.http.port).toBe(8080);
    expect(site.doubts().map(({ name }) => name)).toEqual([
      ...['cure.old', 'http.port', 'cure.readyAt', 'work.days'],
    ]);
    expect(site.list().setAside[2]).toMatchObject({ value: 7, because: { code: 'field-fault' } });
    // Where it is none of the page's business it may be a secret.
    expect(site.list().setAside[1]).toMatchObject({ name: 'http.port', value: null });
    // It can be let go of, also what is no setting any more.
    await choose(site, { 'cure.old': null, 'cure.readyAt': null });
    expect(
      site
        .open()
        .doubts()
        .map(({ name }) => name),
    ).toEqual(['http.port', 'work.days']);
  });

  it('and doctor names it, and what to do', async () => {
    await kept('cure.readyAt=7');
    const { settings, findings } = lookAtSettings({ args: ['--data', data], env: {}, cwd });
    expect(settings?.cure.readyAt).toBe(0.9);
    expect(findings).toMatchObject([
      { level: 'look', says: expect.stringMatching(/^cure\.readyAt/) },
    ]);
    writeFileSync(chosenFileIn(data), 'damaged');
    expect(lookAtSettings({ args: ['--data', data], env: {}, cwd }).findings).toMatchObject([
      { level: 'look', says: expect.stringMatching(/cannot be read: .*line 1/) },
    ]);
  });

  it('lets the older of two that no longer go together fall back, and no other', async () => {
    await kept('cure.capC=30', 'cure.readyAt=0.6', 'cure.boardSpread=0.2');
    const site = standing('[cure]\ntestAt = 0.7\n');
    expect(site.settings.cure).toMatchObject({ capC: 30, readyAt: 0.9, boardSpread: 0.2 });
    expect(site.doubts().map(({ name }) => name)).toEqual(['cure.readyAt']);
    await choose(site, { 'cure.testAt': 0.85 });
    expect(site.settings.cure).toMatchObject({ testAt: 0.85, readyAt: 0.9 });
    // As soon as they go together again, what was chosen holds again.
    await choose(site, { 'cure.testAt': 0.5 });
    expect(site.settings.cure).toMatchObject({ testAt: 0.5, readyAt: 0.6 });
    expect(site.doubts()).toEqual([]);
  });

  it.each([
    ['not TOML', '[[chosen]\nname ='],
    ['of another shape', 'chosen = 3'],
    ['binary', '\u0000\u0001'],
  ])(
    'goes by file and defaults where the file is %s; the next choice keeps it aside',
    async (_, text) => {
      await kept('cure.readyAt=0.95');
      writeFileSync(chosenFileIn(data), text);
      const site = standing('[cure]\nreadyAt = 0.8\n');
      expect(site.settings.cure.readyAt).toBe(0.8);
      expect(site.list().chosenFault).toMatchObject({ code: 'chosen-damaged' });
      expect(site.doubts()[0]?.name).toBeNull();
      await choose(site, { 'cure.readyAt': 0.85 });
      expect(site.doubts()).toEqual([]);
      expect(readFileSync(`${chosenFileIn(data)}.damaged`, 'utf8')).toBe(text);
    },
  );

  it('still tells what does not fit in the settings file, choices or not', async () => {
    await kept('cure.testAt=0.5');
    expect(() => standing('[cure]\ntestAt = 0.9\nreadyAt = 0.6\n')).toThrow(/cure\.testAt/);
  });

  it('follows the file when that is read anew', async () => {
    const site = standing('[cure]\nreadyAt = 0.8\n');
    await choose(site, { 'cure.boardSpread': 0.3 });
    site.file('[cure]\nreadyAt = 0.85\n');
    site.reload();
    expect(site.settings.cure).toMatchObject({ readyAt: 0.85, boardSpread: 0.3 });
  });
});

describe('the file of choices', () => {
  it('is the old one, whole, where writing ends before the new one has its name', async () => {
    const site = standing();
    await choose(site, { 'cure.readyAt': 0.95 });
    vi.mocked(rename).mockRejectedValueOnce(
      Object.assign(new Error('no room'), { code: 'ENOSPC' }),
    );
    await expect(choose(site, { 'cure.readyAt': 0.6 })).rejects.toMatchObject({ code: 'ENOSPC' });
    expect(site.settings.cure.readyAt).toBe(0.95);
    expect(site.open().settings.cure.readyAt).toBe(0.95);
  });

  it('is not misled by the half file of a kill', async () => {
    const site = standing();
    await choose(site, { 'cure.readyAt': 0.95 });
    writeFileSync(`${chosenFileIn(data)}.part`, '[[chosen]]\nname = "cure.re');
    expect(site.open().settings.cure.readyAt).toBe(0.95);
    await choose(site, { 'cure.readyAt': 0.96 });
    expect(site.open().settings.cure.readyAt).toBe(0.96);
    expect(existsSync(`${chosenFileIn(data)}.part`)).toBe(false);
  });
});

it('nothing is chosen on the page but what is named here: a new setting is a decision', () => {
  const onPage = [...settingFields.values()].filter((field) => field.onPage);
  expect(onPage.map(({ name }) => name)).toEqual(
    `
    timeZone language discovery.maxRules commit.spacingMs commit.groupSize
    cure.ruling cure.datumC cure.activationEnergyJPerMol cure.maxGapHours cure.capC cure.boardSpread
    cure.testAt cure.readyAt solvent.limitPpm place.floorShelfColderK
    notices.quietHours.from notices.quietHours.to notices.digestAt notices.ragRepeatHours
    notices.overheatC notices.giveUpHours notices.mqtt.on notices.mqtt.heedsQuietHours
    notices.webhook.heedsQuietHours notices.mail.heedsQuietHours
    work.days work.from work.to work.brushM2PerHour work.mountBoardsPerHour work.goesUpAfter
    work.leastDayMeanC work.monthlyMeanC photos.maxMiB
    application.coldestC application.hottestC application.verySlowBelowC application.slowBelowC
    application.warmAboveC application.dampestRhPercent application.dewMarginK
    application.dampestWoodPercent application.boardsMeasured application.moistureDays
    application.stopBeforeDewHours application.dryBeforeRainHours application.fromEndMm
    trade.hemisphere trade.stockSizes trade.stockLengthsMm trade.weatheredAfterDays
    trade.tinOldAfterDays trade.lookAfterMinutes trade.lookUntilMinutes
    backup.at storage.lowSpaceMiB log.level
  `
      .trim()
      .split(/\s+/),
  );
});
