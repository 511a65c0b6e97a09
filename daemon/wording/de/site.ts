import type { Phrases } from '../phrase.ts';
import type { SiteSentences } from '../subject/site.ts';

const wasSet =
  (way: string) =>
  ({ minutes }: { minutes: number }): string =>
    `Die Uhr des Rechners wurde um ${minutes} min ${way}, und kein Zeitdienst bestätigt es. Die Zeit läuft weiter wie vorher, damit keine Summe verbogen wird; stimmt die neue Zeit, Boardcure neu starten.`;

export const site: Phrases<SiteSentences> = {
  'disk-full': () =>
    'Der Speicher ist voll: Messwerte werden nicht quittiert, damit die Sensoren sie behalten. Platz schaffen; das Aufzeichnen geht von selbst weiter.',
  'disk-low': ({ freeMiB }) =>
    `Auf dem Datenträger des Datenordners sind nur noch ${freeMiB} MiB frei: Platz schaffen, sonst müssen Messwerte bei ihren Sensoren warten.`,
  'broker-away': () => 'Der MQTT-Broker ist nicht erreichbar; Messwerte warten dort.',
  'clock-not-set': () =>
    'Die Uhr des Rechners ist nicht gestellt. Messwerte ohne eigene Zeit werden aufbewahrt und eingeordnet, sobald sie es ist: dem Rechner ein Netz mit Zeitdienst geben oder seine Uhr stellen.',
  'clock-was-set/forward': wasSet('vorgestellt'),
  'clock-was-set/back': wasSet('zurückgestellt'),
  'sensor-clock/ahead': ({ sensor, minutes }) =>
    `Die Uhr von Sensor ${sensor} geht ${minutes} min vor: Für seine Messwerte gilt die Zeit ihrer Ankunft. Seine Uhr stellen.`,
  'sensor-clock/behind': ({ sensor, minutes }) =>
    `Die Uhr von Sensor ${sensor} geht ${minutes} min nach, oder seine Messwerte sind so lange unterwegs: Sie behalten die Zeit, die sie angeben. Seine Uhr stellen oder ihn keine senden lassen.`,
  'folder-gone': ({ name }) =>
    `Der Datenordner ${name} ist nicht zu erreichen: Was jetzt ankommt, geht in eine Datei, die niemand wiederfindet. Prüfen, ob der Datenträger eingehängt ist, den Ordner zurücklegen und Boardcure neu starten.`,
  'database-damaged': ({ found }) =>
    `Die Datenbank ist beschädigt (${found}). Messwerte werden weiter angenommen. Boardcure anhalten und eine Sicherung an ihre Stelle setzen: boardcure restore <file> --replace.`,
  'backup-not-made': ({ because }) =>
    `Die letzte nächtliche Sicherung kam nicht zustande. ${because}`,
};
