import { connectAsync } from 'mqtt';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { BatchSummary } from '../../daemon/contract/batch.ts';
import type { Overview } from '../../daemon/contract/overview.ts';
import { needs } from '../house/needs.ts';
import { launchBrowser, openPage, screens } from './browser.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';

const PIN = 'rack-7-dry';

needs('chromium')('somebody new, from an empty folder to the first verdict', () => {
  let daemon: RunningDaemon;
  let browser: Browser;
  let page: Page;
  const faults: string[] = [];
  /** What somebody has to see and to do: no documentation, and few of either. */
  const done = { screens: 0, taps: 0, typed: 0 };

  beforeAll(async () => {
    daemon = await runDaemon();
    browser = await launchBrowser();
    page = await openPage(browser, screens.phone, { faults });
  });

  afterAll(async () => {
    await browser?.close();
    await daemon?.close();
  });

  const heading = async (name: string) => {
    await page.getByRole('heading', { name, level: 1 }).waitFor();
    done.screens++;
  };
  const tap = async (role: 'button' | 'link' | 'radio', name: string) => {
    await page.getByRole(role, { name, exact: true }).click();
    done.taps++;
  };
  const type = async (label: string, text: string) => {
    await page.getByLabel(label, { exact: true }).fill(text);
    done.typed++;
  };
  const hears = (name: string) =>
    page.waitForFunction((expected) => document.activeElement?.textContent === expected, name);

  it('is led from the bare wall, and asked one thing a screen', async () => {
    await page.goto(`${daemon.page}/`);
    await tap('link', 'Begin');
    await heading('How do you read?');
    // Whoever hears the page, or moves by keys, begins at its heading.
    await hears('How do you read?');
    await tap('link', 'Go on');
    await heading('A PIN for changes');
    await type('New PIN', PIN);
    await tap('button', 'Set the PIN');
    await heading('What is this place called?');
    await type('Name', 'Barn by the river');
    await tap('button', 'Keep the name');
    await heading('The room');
    await page.getByText('Barn by the river').first().waitFor();
    await type('Length', '6');
    await type('Width', '4,5');
    await type('Height', '3');
    await page.getByText('That holds 81 m³ of air.').waitFor();
    await tap('button', 'Make the room');
    await heading('The racks in it');
  });

  it('can leave, and goes on from there on another device', async () => {
    await page.getByRole('link', { name: /^Leave it here/ }).click();
    await page.getByRole('link', { name: 'Go on with the set-up' }).waitFor();
    const desk = await openPage(browser, screens.desk);
    await desk.goto(`${daemon.page}/#/first-run`);
    await desk.getByRole('heading', { name: 'The racks in it' }).waitFor();
    // The address follows the screen.
    await desk.waitForURL((url) => url.hash === '#/first-run/rack');
    await desk.context().close();
    await tap('link', 'Go on with the set-up');
    await heading('The racks in it');
    await tap('button', 'Make the rack');
    await page.getByText('There already: Rack 1.').waitFor();
    await tap('link', 'Go on');
  });

  it('is told what to type into a node, and sees it as soon as it sends', async () => {
    await heading('A sensor');
    const address = `boardcure/shed/sensor/node-1/air-temperature`;
    await page.getByText(address, { exact: true }).waitFor();
    await page.getByText(String(daemon.mqttPort), { exact: true }).waitFor();

    const node = await connectAsync(`mqtt://127.0.0.1:${daemon.mqttPort}`);
    await node.publishAsync(address, '18.4', { qos: 1 });
    await node.publishAsync('farm/attic/temp_f', '70.7', { qos: 1 });
    await page.getByText('1 sensor is heard.').waitFor();
    await page.getByText('Air temperature 18.4 °C').waitFor();
    await page.getByRole('link', { name: 'farm/attic/temp_f' }).waitFor();
    await tap('button', 'At Rack 1');
    await page.getByText('node-1 hangs at Rack 1.').waitFor();
    await node.publishAsync('boardcure/shed/sensor/node-1/relative-humidity', '61', { qos: 1 });
    await node.endAsync();
    await tap('link', 'Go on');
  });

  it('says what the boards are and that they are coated, and is told of the rags', async () => {
    await heading('The boards');
    await type('Name', 'South gable');
    await type('Boards', '24');
    await tap('button', '22 × 145');
    await tap('button', '4.2 m');
    await tap('button', 'Start the batch');
    await heading('The first coat');
    await tap('button', 'Record this coat');
    await page.getByText(/under water in a metal can with a lid/).waitFor();
    await tap('button', 'The rags are seen to');
  });

  it('sees the first live verdict, after nine screens, one of them seen twice, and seven things typed', async () => {
    await heading('The first verdict');
    await page.getByText(/^Likely/).waitFor();
    expect(done).toEqual({ screens: 10, taps: 15, typed: 7 });
    const [batch] = await daemon.call<BatchSummary[]>('GET', 'batches');
    expect(batch).toMatchObject({ name: 'South gable', surface: 'sawn' });
    const overview = await daemon.call<Overview>('GET', 'overview');
    const lying = overview.places.find(({ name }) => name === 'Rack 1');
    expect(lying?.batches[0]?.verdict?.verdict).toBe('wait');
    expect(faults).toEqual([]);
  });

  it('finds it again among the records, and takes them away as CSV', async () => {
    await page.goto(`${daemon.page}/#/records`);
    await page.getByText('2 records').waitFor();
    await page.getByLabel('What', { exact: true }).selectOption({ label: 'Coats' });
    await page.getByRole('button', { name: 'Show', exact: true }).click();
    await page.getByText('1 record', { exact: true }).waitFor();
    expect(new URL(page.url()).hash).toBe('#/records?kind=coat');
    await page.getByRole('link', { name: 'South gable' }).waitFor();
    const csv = page.getByRole('link', { name: 'These records as a CSV file' });
    const address = await csv.getAttribute('href');
    const body = await (await fetch(`${daemon.page}${address}`)).text();
    expect(body.trim().split('\r\n')).toHaveLength(2);
    expect(body).toContain('South gable');
    await page.getByLabel('Words to look for').fill('tar');
    await page.getByRole('button', { name: 'Show', exact: true }).click();
    await page.getByText('Nothing that was recorded fits.').waitFor();
  });

  it('sees which settings are in force and where they came from; a stranger does not', async () => {
    await page.goto(`${daemon.page}/#/settings`);
    // What was given at the start is what is not at its default.
    const entry = page.locator('.setting').filter({ hasText: 'http.port' });
    await entry.getByText('given at the start', { exact: true }).waitFor();
    await entry.locator('summary').click();
    await entry.getByText(/^\[http\]\s+port = \d+$/).waitFor();
    await page.getByLabel('Words to look for').fill('dew margin');
    await page.getByText('application.dewMarginK').waitFor();

    const stranger = await openPage(browser, screens.desk);
    await stranger.goto(`${daemon.page}/#/settings`);
    await stranger.getByRole('alert').getByText('This needs a log-in').waitFor();
    await stranger.context().close();
  });
});

needs('chromium')('a shed that nobody has set up yet', () => {
  let daemon: RunningDaemon;
  let browser: Browser;

  beforeAll(async () => {
    daemon = await runDaemon();
    browser = await launchBrowser();
  });

  afterAll(async () => {
    await browser?.close();
    await daemon?.close();
  });

  it('leads into a simulated one, marked on every page, and takes it away again', async () => {
    const page = await openPage(browser, screens.phone);
    await page.goto(`${daemon.page}/#/first-run/sensor`);
    await page.getByRole('button', { name: 'Try the simulated shed' }).click();
    const door = page.getByRole('link', { name: 'Open the simulated shed' });
    await door.waitFor({ timeout: 60_000 });
    const inside = await openPage(browser, screens.tablet);
    await inside.goto((await door.getAttribute('href')) ?? '');
    await inside.getByText('Rack by the door').first().waitFor();
    for (const path of ['', '#/setup', '#/records']) {
      await inside.goto(`${await door.getAttribute('href')}${path}`);
      await inside.locator('.head').getByText('Simulated shed').waitFor();
      await inside.locator('.head').getByText('simulated, 900 × faster').waitFor();
    }
    await inside.context().close();
    await page.getByRole('button', { name: 'End it and remove what it made' }).click();
    await page.getByRole('button', { name: 'Try the simulated shed' }).waitFor();
    expect(await daemon.call('GET', 'places')).toEqual([]);
    await page.context().close();
  });

  it('is set up with the keys alone, past the head by the first one', async () => {
    const page = await openPage(browser, screens.desk);
    await page.goto(`${daemon.page}/#/setup`);
    await page.getByRole('heading', { name: 'A new place' }).waitFor();
    const { keyboard } = page;
    const focused = () =>
      page.evaluate(() => {
        const at = document.activeElement as HTMLInputElement;
        const label = at.labels?.[0]?.textContent ?? at.textContent ?? '';
        return `${at.tagName.toLowerCase()} ${label}`.trim();
      });
    const tabTo = async (wanted: string) => {
      const passed: string[] = [];
      while ((await focused()) !== wanted) {
        passed.push(await focused());
        if (passed.length > 60) throw new Error(`${wanted} was not reached: ${passed.join(', ')}`);
        await keyboard.press('Tab');
        const outline = await page.evaluate(
          () => getComputedStyle(document.activeElement ?? document.body).outlineStyle,
        );
        // A choice shows it on the words beside its input.
        if (!/^(input|body)/.test(await focused())) expect(outline, await focused()).toBe('solid');
      }
    };
    await keyboard.press('Tab');
    expect(await focused()).toBe('button To the page');
    await keyboard.press('Enter');
    expect(await focused()).toBe('h1 Set up');
    await tabTo('input Rack');
    await keyboard.press('ArrowRight');
    await tabTo('input Name');
    await keyboard.type('Paint room');
    await tabTo('button Make the place');
    await keyboard.press('Space');
    await page.getByText('Made: Paint room.').waitFor();

    await tabTo('summary 1 place, to change');
    await keyboard.press('Enter');
    await tabTo('button Change');
    await keyboard.press('Enter');
    await tabTo('input Holds so much air');
    // Escape closes the form and gives the focus back.
    await keyboard.press('Escape');
    expect(await focused()).toBe('button Change');
    await page.getByLabel('Holds so much air').waitFor({ state: 'detached' });
    await page.context().close();
  });

  it('tells the second of two people that the first one changed the same place', async () => {
    const [first, second] = await Promise.all(
      ['phone', 'desk'].map((screen) => openPage(browser, screens[screen as 'phone' | 'desk'])),
    );
    if (!first || !second) throw new Error('two pages were to be opened');
    for (const page of [first, second]) {
      await page.goto(`${daemon.page}/#/setup`);
      await page.getByText('1 place, to change').click();
      await page.getByRole('button', { name: 'Change Paint room' }).click();
    }
    const form = (page: Page) => page.locator('.sensor .form');
    const keep = (page: Page) =>
      form(page).getByRole('button', { name: 'Keep the change' }).click();
    const name = (page: Page) => form(page).getByLabel('Name', { exact: true });
    const places = () => daemon.call<{ name: string; volumeM3: number | null }[]>('GET', 'places');
    await form(first).getByLabel('Holds so much air').fill('80');
    await name(first).fill('Long room');
    await name(second).fill('Large room');
    await keep(first);
    await form(first).waitFor({ state: 'detached' });
    await keep(second);
    await second.getByText(/^Somebody changed this place while/).waitFor();
    expect(await places()).toMatchObject([{ name: 'Long room', volumeM3: 80 }]);
    // Now it was seen. What is typed is sent, and what the other one alone changed stays.
    await keep(second);
    await form(second).waitFor({ state: 'detached' });
    expect(await places()).toMatchObject([{ name: 'Large room', volumeM3: 80 }]);
    await first.context().close();
    await second.context().close();
  });
});
