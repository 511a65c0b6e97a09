import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { noticeChannels } from '../../daemon/notice-channels.ts';
import { postingPlan } from '../../daemon/notices-out.ts';
import { loadSettings } from '../../daemon/settings/load.ts';

let cwd: string;
beforeEach(() => {
  cwd = mkdtempSync(join(tmpdir(), 'boardcure-notices-'));
});
afterEach(() => rmSync(cwd, { recursive: true, force: true }));

function load(toml: string, env: Record<string, string> = {}) {
  writeFileSync(join(cwd, 'boardcure.toml'), toml);
  return loadSettings({ args: ['--config', 'boardcure.toml'], env, cwd });
}

const hook = '[notices.webhook]\nurl = "https://hooks.example/secret-path?token=abc"\n';
const mail =
  '[notices.mail]\nhost = "smtp.example"\nfrom = "shed@farm.example"\nto = ["me@farm.example"]\n';

describe('the settings of notices', () => {
  it('tell by MQTT alone to begin with, at any hour, and by the rest with quiet hours', () => {
    expect(postingPlan(load('')).channels).toEqual([{ name: 'mqtt', heedsQuiet: false }]);
    const all = load(hook + mail, { BOARDCURE_WEBHOOK_SECRET: 'a'.repeat(16) });
    expect(postingPlan(all)).toMatchObject({
      channels: [
        { name: 'mqtt', heedsQuiet: false },
        { name: 'webhook', heedsQuiet: true },
        { name: 'mail', heedsQuiet: true },
      ],
      quiet: { from: '22:00', to: '06:00' },
    });
  });

  it('take secrets from the environment or from a file of their own', () => {
    writeFileSync(join(cwd, 'key.txt'), `${'k'.repeat(20)}\n`);
    writeFileSync(join(cwd, 'password.txt'), 'tar and oil\n');
    const settings = load(
      `${hook}secretFile = "key.txt"\n${mail}user = "shed"\npasswordFile = "password.txt"\n`,
    );
    expect(settings.notices.webhook.secret).toBe('k'.repeat(20));
    expect(settings.notices.mail.password).toBe('tar and oil');
    const env = { BOARDCURE_MAIL_PASSWORD: 'of env', BOARDCURE_WEBHOOK_SECRET: 'e'.repeat(16) };
    expect(load(hook + mail, env).notices).toMatchObject({
      webhook: { secret: 'e'.repeat(16) },
      mail: { password: 'of env' },
    });
  });

  it.each([
    ['a webhook without a key', hook, /secret/],
    ['a key that is too short', `${hook}secret = "short"\n`, /at least 16 characters/],
    [
      'a key file that is not there',
      `${hook}secretFile = "gone.txt"\n`,
      /gone\.txt cannot be read/,
    ],
    [
      'a webhook to a link-local address',
      `[notices.webhook]\nurl = "http://169.254.169.254/"\nsecret = "${'k'.repeat(16)}"\n`,
      /link-local/,
    ],
    ['mail from nobody', '[notices.mail]\nhost = "smtp.example"\nto = ["a@b.example"]\n', /from/],
    ['mail to nobody', '[notices.mail]\nhost = "smtp.example"\nfrom = "a@b.example"\n', /to/],
    ['a time that is none', '[notices.quietHours]\nfrom = "25:00"\n', /time of day/],
    ['a time zone that is none', 'timeZone = "Europe/Shed"\n', /time zone/],
  ])('refuse %s', (_what, toml, says) => {
    expect(() => load(toml)).toThrow(says);
  });

  it('show neither secrets nor where they hide to anyone', () => {
    const settings = load(`${hook}secret = "${'k'.repeat(16)}"\n${mail}password = "tar and oil"\n`);
    const shown = JSON.stringify(noticeChannels(settings, []));
    expect(shown).toContain('hooks.example');
    expect(shown).not.toMatch(/secret-path|token|abc|kkkk|tar and oil|me@farm|shed@farm/);
  });
});
