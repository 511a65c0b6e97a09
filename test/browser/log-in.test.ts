import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { needs } from '../house/needs.ts';
import { launchBrowser, openPage, screens } from './browser.ts';
import { type RunningDaemon, runDaemon } from './running-daemon.ts';

/** As seen by the daemon a request that was passed on is not from the computer itself. */
const elsewhere = { 'x-forwarded-for': '192.0.2.7' };

needs('chromium')('the PIN', () => {
  let daemon: RunningDaemon;
  let browser: Browser;
  let computer: Page;
  let phone: Page;

  beforeAll(async () => {
    daemon = await runDaemon();
    browser = await launchBrowser();
    computer = await openPage(browser, screens.desk);
    phone = await openPage(browser, screens.phone, { extraHTTPHeaders: elsewhere });
  });

  afterAll(async () => {
    await browser?.close();
    await daemon?.close();
  });

  it('is chosen on the computer, which is logged in with that', async () => {
    await computer.goto(`${daemon.page}/#/access`);
    await computer.getByText(/this computer may do everything/).waitFor();
    await computer.getByLabel('New PIN').fill('123456');
    await computer.getByRole('button', { name: 'Set the PIN' }).click();
    await computer
      .getByText(/is a row like 123456/)
      .first()
      .waitFor();
    await computer.getByLabel('New PIN').fill('larch-27');
    await computer.getByRole('button', { name: 'Set the PIN' }).click();
    await computer.getByText('This device is logged in and may do everything.').waitFor();
  });

  it('is asked for when a phone sends something, which is then sent again', async () => {
    await phone.goto(`${daemon.page}/#/setup`);
    const form = phone.getByRole('region', { name: 'A new place' });
    await form.getByRole('radio', { name: 'Room' }).check();
    await form.getByLabel('Name').fill('Paint room');
    await form.getByRole('button', { name: 'Make the place' }).click();
    const dialog = phone.getByRole('dialog', { name: 'This needs the PIN' });
    await dialog.getByLabel('PIN').fill('larch-28');
    await dialog.getByRole('button', { name: 'Log in' }).click();
    await dialog.getByText('The PIN or code is not right').waitFor();
    await dialog.getByLabel('PIN').fill('larch-27');
    await dialog.getByLabel('What this device is called').fill('Crew phone');
    await dialog.getByRole('button', { name: 'Log in' }).click();
    await form.getByText('Made: Paint room.').waitFor();
    expect(await phone.getByRole('dialog').count()).toBe(0);
  });

  it('lets a tablet in by a code, and sends a phone away', async () => {
    await computer.reload();
    const devices = computer.getByRole('region', { name: 'Devices' });
    await devices.getByText('Crew phone').waitFor();
    await devices.getByLabel('What the tablet is called').fill('North wall');
    await devices.getByRole('button', { name: 'Make a pairing code' }).click();
    const code = await devices.getByRole('status').locator('.shown-once-text').textContent();
    const tablet = await openPage(browser, screens.tablet, { extraHTTPHeaders: elsewhere });
    await tablet.goto(`${daemon.page}/#/access`);
    await tablet.getByLabel('Pairing code').fill(code ?? '');
    await tablet.getByRole('button', { name: 'Pair this device' }).click();
    await tablet.getByText('This is a paired wall tablet: it may look.').waitFor();
    await computer.reload();
    await devices.getByText('North wall').waitFor();
    await devices.getByRole('button', { name: 'Log out Crew phone' }).click();
    await devices.getByText('Crew phone').waitFor({ state: 'detached' });
    await phone.reload();
    await phone.goto(`${daemon.page}/#/access`);
    await phone.getByRole('heading', { name: 'Log in' }).waitFor();
    await tablet.context().close();
  });
});
