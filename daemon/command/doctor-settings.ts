import { laidOn, readGround, SettingsError, type SettingsSource } from '../settings/load.ts';
import type { Settings } from '../settings/schema.ts';
import { doubtsOf, type SettingDoubt } from '../settings/standing.ts';
import { type Finding, look, ok, wrong } from './doctor-finding.ts';

/** A user and password in an address, up to its last at sign. */
const credentials = /[^\s"'/]*\/*[^\s"'/@]*:[^\s"']*@/g;
/** Lines of the file that a parser quotes under its fault: they may hold a password. */
const quotedLine = /^\s*(\d+:|\^)/;

/** Faults of settings as they may be shown to anyone: no password, and no line of the file. */
export function withoutSecrets(text: string): string {
  return text
    .split('\n')
    .filter((line) => !quotedLine.test(line))
    .map((line) => line.replaceAll(credentials, '…@').trim())
    .filter((line) => line !== '')
    .join(' ');
}

/**
 * Reads the settings as the daemon would.
 *
 * @returns them, or null, and what was found
 */
export function lookAtSettings(source: SettingsSource): {
  settings: Settings | null;
  findings: Finding[];
} {
  try {
    const laid = laidOn(readGround(source));
    const doubts = doubtsOf(laid).map(lookAtDoubt);
    const findings = doubts.length > 0 ? doubts : [ok('settings', 'The settings fit.')];
    return { settings: laid.settings, findings };
  } catch (cause) {
    if (!(cause instanceof SettingsError)) throw cause;
    const findings = faultsOf(cause.message).map((fault) =>
      wrong('settings', fault, 'Mend that first; what hangs on the settings was not looked at.'),
    );
    return { settings: null, findings };
  }
}

/** The faults in a message one by one; each is marked by a cross where there are several. */
function faultsOf(message: string): string[] {
  const marked = message.split('✖').slice(1);
  return (marked.length > 0 ? marked : [message]).map(withoutSecrets);
}

function lookAtDoubt({ name, because }: SettingDoubt): Finding {
  const doThis = 'Choose it anew on the settings page, or let go of it there.';
  return name === null
    ? look('settings', because.text, 'Look whether that file can be mended, or remove it.')
    : look(
        'settings',
        `${name} was chosen on the page and does not hold: ${because.text}.`,
        doThis,
      );
}
