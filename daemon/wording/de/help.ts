import type { Phrases } from '../phrase.ts';
import type { HelpSentences } from '../subject/help.ts';

const heaterCaution =
  'Nur mit einem Heizgerät, an dem nichts brennt und nichts glüht, oder mit einem, dessen Abgase ins Freie gehen, fern von Brettern, Lappen und Dämpfen, nach seiner Anleitung und den örtlichen Vorschriften. Nie eine offene Flamme, nie ein glühendes Gerät oder eines ohne Abzug.';

const dryTheAir =
  'die Luft trocknen oder lüften, solange es draußen trockener ist. Dass es davon allein früher härtet, wird nicht gerechnet.';

/** So many hours, from a day and a half on in days. */
const inHoursOrDays = (hours: number) =>
  hours < 36 ? `${Math.round(hours)} h` : `${Math.round(hours / 24)} Tage`;

export const help: Phrases<HelpSentences> = {
  'air-unknown/how-warm': () => 'Kein frischer Messwert sagt, wie warm es dort ist.',
  'stands-still': ({ tempC }, speak) => `Bei ${speak.temperature(tempC)} härtet es kaum.`,
  cold: ({ tempC }, speak) => `Dort ist es kalt: ${speak.temperature(tempC)}.`,
  damp: ({ rhPercent }, speak) => `Dort ist es feucht: ${speak.humidity(rhPercent)}.`,
  'still-air': () => 'Die Luft steht dort.',
  'failed-test/slow-coat': () =>
    'Er hat eine Fingerprobe nicht bestanden, ist also ein langsamer Anstrich.',
  time: () => 'Nichts ist falsch: Das Öl nimmt Sauerstoff in seinem eigenen Tempo auf.',
  'help-changed-air': () =>
    'Lüften: gegenüberliegende Türen öffnen, die Bretter auseinanderrücken. Abends schließen, wenn es draußen feuchter wird. Kein Gebläse direkt auf nasse Farbe.',
  'help-changed-air/wetter-outside': () =>
    'Lüften, wenn es draußen trockener ist als drinnen; jetzt ist es feuchter. Den Brettern so lange mehr Abstand geben. Kein Gebläse direkt auf nasse Farbe.',
  'help-drier': () =>
    `Feuchte Luft hält das Holz nass und den Film dem Tau ausgesetzt: ${dryTheAir}`,
  'help-drier/near-dew': ({ marginK }, speak) =>
    `Binnen eines Tages kommen die Bretter bis auf ${speak.temperatureDifference(marginK)} an den Taupunkt: ${dryTheAir}`,
  'help-warmer-later': () =>
    'Wärme würde helfen, aber nicht am ersten Tag nach einem Anstrich mit Terpentinöl: zuerst die Dämpfe hinauslassen, ohne Heizgerät und ohne Funken in der Nähe.',
  'help-warmer': ({ toTempC, soonerHours }, speak) =>
    `Auf ${speak.temperature(toTempC, 0)} gehalten: etwa ${inHoursOrDays(soonerHours)} früher. ${heaterCaution}`,
  'help-warmer/at-all': ({ toTempC }, speak) =>
    `Auf ${speak.temperature(toTempC, 0)} gehalten: Es würde überhaupt härten. ${heaterCaution}`,
  'help-touch': () => 'Anfassen: Eine Fingerprobe sagt jetzt mehr als jedes Rechnen.',
  'help-only-time': () => 'Nur Zeit hilft: lassen, wie es ist.',
  'help-only-time/outdoors': () => 'Nur Zeit und Wetter helfen: lassen, wie es ist.',
};
