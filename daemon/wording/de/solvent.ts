import type { Phrases } from '../phrase.ts';
import type { SolventSentences } from '../subject/solvent.ts';

export const solvent: Phrases<SolventSentences> = {
  'solvent-leaves': ({ litres }, speak) =>
    `Etwa ${speak.volume(litres, 'two-figures')} Terpentinöl weichen aus diesem Anstrich, das meiste am ersten Tag. Lüften; keine Flamme, kein glühendes Heizgerät, keine Funken. Das Merkblatt des Produkts und die örtlichen Vorschriften gehen vor.`,
  'solvent-estimate': (told, speak) => {
    const { volumeM3, perHour, perHourKnown, nowPpm, peakPpm, limitPpm, limitIsLocal } = told;
    const air = perHourKnown
      ? 'bei einem Luftwechsel von'
      : 'wenn der Luftwechsel nur so hoch ist:';
    const limit = limitIsLocal
      ? 'der hier eingestellte Grenzwert'
      : 'der niedrigste veröffentlichte Grenzwert';
    return `Schätzung für ${speak.roomVolume(volumeM3)}, ${air} ${speak.perHour(perHour)}-mal je Stunde: ${speak.concentration(nowPpm)} jetzt, höchstens ${speak.concentration(peakPpm)}; ${limit} ist ${speak.concentration(limitPpm, 'as-set')}. Nahe den Brettern und am Boden ist es mehr. Dies ist kein Gaswarner.`;
  },
  'solvent-air-needed': ({ perHour }, speak) =>
    `Um darunter zu bleiben, müsste die Luft in den ersten Stunden etwa ${speak.perHour(perHour)}-mal je Stunde wechseln. Wo das nicht geht, zugelassene Fachleute nach Atemschutz fragen.`,
  'solvent-explosive': ({ percent }, speak) =>
    `Das sind ${speak.percent(percent)} von dem, was sich entzünden lässt: Türen und Fenster öffnen, draußen bleiben und jeden Funken fernhalten.`,
};
