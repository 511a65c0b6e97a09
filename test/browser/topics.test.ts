import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Sensor } from '../../daemon/contract/sensor.ts';
import type { TopicRule } from '../../daemon/contract/topic-rule.ts';
import { needs } from '../house/needs.ts';
import { launchBrowser, openPage, screens } from './browser.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';

needs('chromium')('a sensor on topics of its own, by the pages alone', () => {
  let daemon: RunningDaemon;
  let browser: Browser;
  let page: Page;
  const faults: string[] = [];

  beforeAll(async () => {
    daemon = await runDaemon();
    await daemon.call('POST', 'places', { name: 'North rack', kind: 'rack' });
    browser = await launchBrowser();
    page = await openPage(browser, screens.tablet, { faults });
  });

  afterAll(async () => {
    await browser?.close();
    await daemon?.close();
  });

  const send = (topic: string, payload: string) => daemon.send(topic, payload);
  const latest = async (id: string) => {
    const sensors = await daemon.call<Sensor[]>('GET', 'sensors');
    return sensors.find((sensor) => sensor.id === id);
  };

  it('is found with its last value, and two clicks give it a quantity and a place', async () => {
    await send('farm/attic/temp_f', '70.7');
    await page.goto(`${daemon.page}/#/setup`);
    const found = page.getByRole('listitem').filter({ hasText: 'farm/attic/temp_f' });
    await found.getByText('looks like 21.5 °C').waitFor();
    // The guess is chosen already: what is left is where it hangs, and to take it in.
    const quantity = found.getByLabel('What 70.7 is');
    expect(await quantity.inputValue()).toBe('air-temperature');
    await found.getByLabel('Where farm-attic hangs').selectOption({ label: 'North rack' });
    await found.getByRole('button', { name: 'Take it in' }).click();
    await page.getByText('farm-attic hangs at North rack; its next message counts.').waitFor();
    await found.waitFor({ state: 'detached' });
    await send('farm/attic/temp_f', '68');
    expect(await latest('farm-attic')).toMatchObject({
      latest: [{ quantity: 'air-temperature', raw: 20 }],
    });
    expect((await latest('farm-attic'))?.placeId).not.toBeNull();
  });

  it('is taken for what was chosen, not for what was guessed', async () => {
    await send('farm/board', '{"t":7.5,"rssi":-70}');
    const found = page.getByRole('listitem').filter({ hasText: 'farm/board' });
    await found.getByLabel('What 7.5 at /t is').selectOption({ label: 'Surface temperature' });
    await found.getByRole('button', { name: 'Take it in' }).click();
    await page.getByText('farm-board is a sensor from its next message on.').waitFor();
    await send('farm/board', '{"t":7.75}');
    expect(await latest('farm-board')).toMatchObject({
      placeId: null,
      latest: [{ quantity: 'surface-temperature', raw: 7.75 }],
    });
  });

  it('has its rule tried on its last messages while that is being written', async () => {
    for (const [node, tenths] of [
      ['n1', 215],
      ['n2', 197],
    ]) {
      await send(`yard/${node}/up`, JSON.stringify({ d: [{ t: tenths, h: '55,5 %' }] }));
    }
    await page.goto(`${daemon.page}/#/topics`);
    await page.getByRole('button', { name: 'Write a new rule' }).click();
    const trial = page.getByRole('region', { name: 'What it would make of the last messages' });
    await page.getByLabel('Topics', { exact: true }).fill('#');
    await trial.getByText('which this site uses itself').waitFor();
    await page.getByLabel('Topics', { exact: true }).fill('yard/{sensor}/up');
    await trial.getByText('It would take 2 topics').waitFor();
    await trial.getByText('where the rule looks for values').first().waitFor();
    await page.getByLabel('Where it stands').fill('/d/0/t');
    await trial.getByText('215 °C').waitFor({ state: 'detached' });
    await trial.getByText('is 215 °C, but air temperature lies').waitFor();
    await page.getByLabel('Times', { exact: true }).fill('0,1');
    await trial.getByText('21.5 °C').waitFor();
    await trial.getByText('air temperature of n2').waitFor();
    await page.getByRole('button', { name: 'One more quantity' }).click();
    await page.getByLabel('Where it stands').last().fill('/d/0/h');
    await trial.getByText('55.5 %').first().waitFor();
    expect(await daemon.call<TopicRule[]>('GET', 'topic-rules')).toHaveLength(2);
    await page.getByRole('button', { name: 'Save the rule' }).click();
    await page.getByText('The rule for yard/{sensor}/up holds from now on.').waitFor();
    const [, , rule] = await daemon.call<TopicRule[]>('GET', 'topic-rules');
    expect(rule).toMatchObject({
      pattern: 'yard/{sensor}/up',
      values: [
        { quantity: 'air-temperature', pointer: '/d/0/t', scale: 0.1 },
        { quantity: 'relative-humidity', pointer: '/d/0/h', unit: '%' },
      ],
    });
  });

  it('that is refused says so at each faulty field, and saves nothing', async () => {
    await page.getByRole('button', { name: 'Write a new rule' }).click();
    await page.getByLabel('Topics', { exact: true }).fill('yard/+/up/#/x');
    await page.getByLabel('Where it stands').fill('temp');
    await page.getByRole('button', { name: 'Save the rule' }).click();
    await page.getByRole('alert').waitFor();
    for (const label of ['Topics', 'Where it stands']) {
      const field = page.getByLabel(label, { exact: true });
      expect(await field.getAttribute('aria-invalid'), label).toBe('true');
    }
    await page.getByRole('button', { name: 'Leave it as it was' }).click();
    expect(await daemon.call('GET', 'topic-rules')).toHaveLength(3);
    expect(faults.filter((fault) => !fault.includes('status of 400'))).toEqual([]);
    faults.length = 0;
  });

  it('can have its rule changed, and taken away', async () => {
    const rule = page.getByRole('listitem').filter({ hasText: 'yard/{sensor}/up' });
    await rule.getByRole('button', { name: 'Change it' }).click();
    await page.getByLabel('The sensor’s name').fill('yard-{sensor}');
    const trial = page.getByRole('region', { name: 'What it would make of the last messages' });
    await trial.getByText('air temperature of yard-n1').waitFor();
    await page.getByRole('button', { name: 'Save the change' }).click();
    await rule.getByText('yard-{sensor}').waitFor();
    await rule.getByRole('button', { name: 'Take it away' }).click();
    await rule.waitFor({ state: 'detached' });
    expect(faults).toEqual([]);
  });
});
