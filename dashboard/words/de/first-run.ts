import type { firstRun as English } from '../en/first-run.ts';
import { plural } from '../plural.ts';

export const firstRun: typeof English = {
  step: (at, of) => `Schritt ${at} von ${of}`,
  back: 'Zurück',
  goOn: 'Weiter',
  later: 'Jetzt nicht',
  leave: 'Hier aufhören. Was getan ist, bleibt, und von dort geht es weiter.',
  reader: {
    title: 'Wie lesen Sie?',
    says: 'Sprache und Einheiten dieses Geräts. Jedes andere Telefon, jeder andere Bildschirm wählt selbst.',
  },
  access: {
    title: 'Eine PIN für Änderungen',
    says: 'Alle in diesem Netz dürfen ansehen. Wer etwas ändern will, wird nach der PIN gefragt.',
    here: 'Sie sitzen am Rechner selbst und dürfen deshalb ohne PIN weitermachen. Von einem Telefon lässt sich nichts eintragen, bis es eine PIN gibt.',
    code: 'Sie sitzen nicht am Rechner selbst. Beim Start hat er einen Einrichtungscode ausgegeben: Der zeigt, dass es Ihrer ist.',
    set: 'Es gibt schon eine PIN. Anmelden und weitermachen.',
    done: 'Es gibt eine PIN, und dieses Gerät darf ändern.',
  },
  site: {
    title: 'Wie heißt dieser Ort?',
    says: 'Der Name steht oben auf jeder Seite. Die Topics der Sensoren bleiben, wie sie sind.',
    name: 'Name',
    nameHint: 'Zum Beispiel Scheune am Fluss',
    zone: (zone, time) => ['Tage und Stunden gelten für ', zone, `, wo es jetzt ${time} ist.`],
    otherZone: 'Stimmt das nicht?',
    zoneHow:
      'Die Zeitzone ist eine Einstellung. Diese Zeile mit der gewünschten Zone ganz oben in die Einstellungsdatei setzen und den Dienst neu starten:',
    keep: 'Namen behalten',
  },
  room: {
    title: 'Der Raum',
    says: 'Wo die Bretter härten. Seine Größe sagt, wie schnell sich Lösemitteldämpfe sammeln; sie kann fehlen.',
    usualName: 'Malraum',
    make: 'Raum anlegen',
    there: (names) => `Schon da: ${names}.`,
    otherKind: 'Die Bretter liegen im Freien oder sind an einer Hauswand',
  },
  rack: {
    title: 'Die Gestelle darin',
    says: 'Je eines wird ein Brett an der Wand. So viele anlegen, wie es gibt; wie viel auf eines passt, lässt sich auch später sagen.',
    usualName: (number) => `Gestell ${number}`,
    name: 'Name',
    make: 'Gestell anlegen',
    there: (names) => `Schon da: ${names}.`,
  },
  sensor: {
    title: 'Ein Sensor',
    says: 'Er erscheint hier von selbst mit seinem ersten Messwert. Dann sagen, wo er hängt.',
    listening: 'Es wird gelauscht …',
    heard: (count) =>
      plural('de', count, {
        one: '# Sensor ist zu hören.',
        other: '# Sensoren sind zu hören.',
      }),
    hangsWhere: (sensor) => `Wo hängt ${sensor}?`,
    here: (place) => `Hier: ${place}`,
    hangs: (sensor, place) => `${sensor} hängt jetzt hier: ${place}.`,
    unknown: (count) =>
      plural('de', count, {
        one: 'Auf # Topic ist etwas zu hören, das noch nicht verstanden wird:',
        other: 'Auf # Topics ist etwas zu hören, das noch nicht verstanden wird:',
      }),
    teach: (topic) => ['Sagen, was es bedeutet: ', topic],
    how: 'Was in einen Sensorknoten gehört',
    address: 'Adresse des Brokers',
    port: 'Port',
    topic: 'Topic, mit einem eigenen Namen in der Mitte',
    payload: 'Nachricht: nur die Zahl, in °C',
    otherTopics:
      'Für die Feuchte endet das Topic auf relative-humidity, und die Zahl ist in %. Andere Namen und Formen werden auch gefunden und lassen sich beibringen.',
    external: 'Die Sensoren senden an einen anderen Broker, von dem dieser Rechner liest.',
    tryIt: 'Zum Ausprobieren von einem Rechner mit einem MQTT-Programm:',
  },
  simulated: {
    title: 'Noch keine Sensoren?',
    says: 'Zuerst einen simulierten Schuppen ansehen: vier Gestelle, erfundene Bretter und erfundenes Wetter, ein Tag in etwa anderthalb Minuten. Er läuft neben diesem mit eigenen Daten, und nichts davon bleibt.',
    start: 'Den simulierten Schuppen ausprobieren',
    starting: 'Der simulierte Schuppen wird gebaut: vier Tage davon in wenigen Sekunden.',
    open: 'Den simulierten Schuppen öffnen',
    runs: 'Er läuft, bis Sie ihn beenden, höchstens zwei Stunden.',
    stop: 'Beenden und entfernen, was er angelegt hat',
    failed: 'Der simulierte Schuppen hat von selbst aufgehört. Was er zuletzt sagte:',
  },
  batch: {
    title: 'Die Bretter',
    says: 'Was zusammen gestrichen wird, ist eine Partie. Der Anstrichplan richtet sich nach der Oberfläche.',
    there: (names) => `Schon da: ${names}.`,
  },
  coat: {
    title: 'Der erste Anstrich',
    says: (batch, coat) => `${batch}: ${coat}. Die Uhr läuft ab dem letzten Brett.`,
    mixture: (mixture, faces) => `${mixture}; ${faces}.`,
    done: 'Das letzte Brett war fertig',
    record: 'Diesen Anstrich eintragen',
    ragsSeen: 'Um die Lappen ist gekümmert',
  },
  verdict: {
    title: 'Das erste Urteil',
    says: (batch) => `Das sagt die Wand von nun an über ${batch}. Es ändert sich von selbst.`,
    noBatch: 'Noch hat keine Partie einen Anstrich.',
    noAir:
      'Kein Sensor meldet, wie die Luft dort ist, deshalb lässt sich noch nichts sagen. Sobald einer seinen Platz hat, steht das Urteil hier.',
    next: 'Was als Nächstes kommt',
    toTheWall: 'Zur Wand; sie ist für ein Tablet im Schuppen gemacht',
    toTheBatch: 'Zur Partie: wann sie gewendet, gestapelt, angebracht werden darf',
    toTheRest: 'Mehr einrichten: Gestelle, Sensoren, Pläne, Dosen',
    toTheCard: 'Eine Karte fürs Gestell drucken',
  },
};
