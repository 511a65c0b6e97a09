import { mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { isFollowing, systemTimeService } from '../../daemon/time-service.ts';

/** As in the example of chronyc(1), chrony 4.3, `tracking`; the last line is put in by the test. */
const tracking = (status: string) => `Reference ID    : CB00710F (ntp1.example.net)
Stratum         : 3
Ref time (UTC)  : Fri Jan 27 09:49:17 2017
System time     : 0.000006523 seconds slow of NTP time
Last offset     : -0.000006747 seconds
Update interval : 64.2 seconds
Leap status     : ${status}
`;

describe('what chrony says of the clock', () => {
  // chronyc(1): "can be Normal, Insert second, Delete second or Not synchronised".
  it.each([
    ['Normal', true],
    ['Insert second', true],
    ['Delete second', true],
    ['Not synchronised', false],
  ])('“%s”: it is synchronised, %s', (status, expected) => {
    expect(isFollowing(tracking(status))).toBe(expected);
  });

  it('nothing, where it does not run', () => {
    expect(isFollowing('')).toBe(false);
    expect(isFollowing('506 Cannot talk to daemon\n')).toBe(false);
  });
});

describe('the file that systemd-timesyncd touches', () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'boardcure-timesync-'));
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  // systemd-timesyncd.service(8): "a file that is touched on each successful synchronization".
  it('tells by being there, and by its time that the clock was set anew', () => {
    const file = join(folder, 'synchronized');
    const service = systemTimeService(file);
    expect(service.glance()).toEqual({ synchronised: false, mark: null });
    writeFileSync(file, '');
    const times = [1000, 2000].map((seconds) => {
      utimesSync(file, seconds, seconds);
      return service.glance();
    });
    expect(times).toEqual([
      { synchronised: true, mark: 1_000_000 },
      { synchronised: true, mark: 2_000_000 },
    ]);
  });
});
