import type { SettingDescriptions } from '../setting-descriptions.ts';

/** What each setting does. The names of settings and their values stay as the file has them. */
export const settingDescriptions: SettingDescriptions = {
  data: ['ead4', 'Ordner, in dem die Datenbank liegt'],
  site: ['f1c0', 'Name dieser Anlage in den MQTT-Topics'],
  timeZone: [
    'fb9b',
    'IANA-Name der Zeitzone, in der Tage und Uhrzeiten gelten; ohne Angabe die des Rechners',
  ],
  language: [
    '825a',
    'Sprache der Hinweise und der Zusammenfassung am Morgen: en, sv, de, nb oder fi; jede Seite spricht die Sprache dessen, der sie liest',
  ],
  'access.look': [
    'a32c',
    'open: Alle im örtlichen Netz dürfen ansehen; log-in: Zum Ansehen ist eine PIN oder ein gekoppeltes Tablet nötig, sobald eine PIN gesetzt ist, und bis dahin darf es nur der Rechner selbst',
  ],
  'access.idleHours': ['ab81', 'eine Anmeldung endet, wenn sie so lange nicht benutzt wurde'],
  'access.longestDays': [
    '2250',
    'eine Anmeldung endet nach dieser Zeit auf jeden Fall; gekoppelte Tablets bleiben, bis sie entfernt werden',
  ],
  'http.host': ['e214', 'Adresse, unter der die Seiten ausgeliefert werden'],
  'http.port': ['32c1', '0 nimmt einen freien Port'],
  'http.maxStreams': [
    '9286',
    'so viele Seiten werden zugleich auf dem Laufenden gehalten; eine weitere wird abgewiesen',
  ],
  'http.names': [
    'a063',
    'Namen außer dem eigenen, unter denen die Seiten geöffnet werden, zum Beispiel shed.example; Anfragen unter jedem anderen Namen werden abgewiesen. IP-Adressen und localhost gehen immer',
  ],
  'http.tls': ['d245', 'ob die Seiten über TLS (https) ausgeliefert werden; siehe Abschnitt tls'],
  'http.maxRequestsPerMinute': [
    'db53',
    'so viele Anfragen eines Geräts werden beantwortet; der Rechner selbst zählt nicht mit',
  ],
  'http.maxConnections': [
    '7a3c',
    'so viele Verbindungen sind zugleich offen; ein Gerät darf ein Viertel davon haben',
  ],
  'http.requestSeconds': [
    '7ad6',
    'längste Zeit, bis eine Anfrage ganz da ist; ihr Kopf muss in der Hälfte davon da sein',
  ],
  'mqtt.host': ['bb26', 'Adresse des eingebauten Brokers'],
  'mqtt.port': ['32c1', '0 nimmt einen freien Port'],
  'mqtt.tlsPort': [
    'f2a7',
    'Port des eingebauten Brokers für TLS, meist 8883; ohne Angabe keiner. Siehe Abschnitt tls',
  ],
  'mqtt.plain': [
    '677d',
    'ob der eingebaute Broker auch ohne TLS lauscht; false nur zusammen mit einem tlsPort',
  ],
  'mqtt.external': [
    '7767',
    'ein anderer Broker als mqtt://host:port; der eingebaute bleibt dann aus',
  ],
  'mqtt.clientId': [
    'bdd2',
    'Name der Sitzung an einem anderen Broker; ohne Angabe aus dem Namen der Anlage gebildet',
  ],
  'mqtt.maxSensors': [
    '555d',
    'so viele Sensoren sind höchstens bekannt; die Messwerte weiterer werden abgewiesen',
  ],
  'mqtt.maxPayloadBytes': ['4d29', 'eine größere Nachricht wird als Messwert abgewiesen'],
  'mqtt.maxPacketBytes': [
    'df69',
    'ein größeres Paket liest der eingebaute Broker nicht: Stattdessen wird die Verbindung getrennt',
  ],
  'mqtt.maxConnections': ['1b5f', 'so viele Verbindungen hat der eingebaute Broker zugleich offen'],
  'mqtt.connectSeconds': [
    '55a4',
    'längste Zeit zwischen dem Verbinden mit dem eingebauten Broker und dem CONNECT',
  ],
  'mqtt.maxUnderWay': [
    'cd6a',
    'so viele Nachrichten dürfen zugleich auf den Datenträger warten; darüber liest der eingebaute Broker von keinem Sender mehr, bis einige geschrieben sind',
  ],
  'mqtt.maxUnreadBytes': [
    'e004',
    'so viel darf im eingebauten Broker auf einen Client warten, der nicht liest; darüber wird er getrennt',
  ],
  'mqtt.maxRetained': [
    '04a9',
    'von so vielen Topics bewahrt der eingebaute Broker die letzte Nachricht für die Clients auf',
  ],
  'discovery.maxTopics': [
    'a251',
    'so viele Topics, die keine Regel kennt, werden mit ihren letzten Nachrichten im Arbeitsspeicher gemerkt, zum Einrichten von Sensoren; 0 merkt sich keine',
  ],
  'discovery.maxBytes': [
    '92f7',
    'so viel wird von einer Nachricht gemerkt; von jedem Topic fünf Nachrichten',
  ],
  'discovery.maxRules': [
    'd12e',
    'so viele Topic-Regeln lassen sich anlegen; jedes Topic wird mit allen verglichen',
  ],
  'commit.spacingMs': [
    '95f4',
    'so lange wartet ein Messwert bei gleichmäßigem Zufluss höchstens auf andere, bevor er geschrieben und quittiert wird; der erste nach einer ruhigen Weile, Schübe, Nachgesendetes und wer auf Antwort wartet werden nicht aufgeschoben. Das schont eine SD-Karte: Bei einem Messwert je Sekunde schreibt 5000 etwa 180 MB am Tag (bis zum Doppelten wurde gesehen, wenn daneben viel anderes geschrieben wird), 2000 etwa 330, 0 etwa 600; bei 20 Messwerten je Sekunde schreibt 5000 etwa 430 bis 620 MB am Tag, 2000 etwa 1000 und 1000 etwa 1400. Viele Knoten geben nach 10 s auf',
  ],
  'commit.groupSize': [
    '0b32',
    'warten so viele Messwerte, wird das Schreiben nicht länger aufgeschoben, gleich bei welchem Abstand',
  ],
  'cure.ruling': [
    '6359',
    'die Rate, nach der sich Urteile richten; die andere wird daneben mitgeführt',
  ],
  'cure.datumC': ['5d4d', 'Temperatur, unter der die Summe der Gradstunden stillsteht'],
  'cure.activationEnergyJPerMol': ['71b7', 'Aktivierungsenergie der Arrhenius-Rate'],
  'cure.maxGapHours': ['db16', 'längste Zeit zwischen Messwerten, die noch zählt'],
  'cure.capC': [
    'caef',
    'was wärmer ist, trägt nichts zu dem bei, was Urteile zählen: Ein heißer, fetter Anstrich bekommt eine Haut',
  ],
  'cure.boardSpread': [
    '2b7e',
    'Streuung zwischen den Brettern eines Anstrichs, als Standardabweichung des Logarithmus ihres Bedarfs; über 0 richten sich Urteile nach dem langsamsten Zehntel der Bretter, wo Fingerproben an einem mittleren gemacht wurden',
  ],
  'cure.testAt': ['9942', 'Wahrscheinlichkeit, ab der eine Probe ansteht'],
  'cure.readyAt': ['52cf', 'Wahrscheinlichkeit, ab der „bereit“ gesagt wird'],
  'solvent.limitPpm': [
    '86ca',
    'Grenzwert für Terpentin nach den örtlichen Vorschriften; ohne Angabe der niedrigste veröffentlichte, 20 ppm',
  ],
  'place.floorShelfColderK': [
    '544e',
    'um so viel kälter gilt die unterste Lage eines Raums oder Gestells, wo nur ein Sensor hängt und nicht an dieser Lage; das hält den Pinsel nahe am Taupunkt zurück und ändert keine Summe. 0, wo nachgesehen wurde',
  ],
  'notices.quietHours.from': ['4dee', 'von da an werden die Leute geschont'],
  'notices.quietHours.to': ['4a48', 'bis dahin; gleich wie from: nie'],
  'notices.digestAt': [
    'd73b',
    'wann der kommende Tag zusammengefasst wird; nie, wo auf der Seite „Nichts“ gewählt ist: die Datei hat kein Wort dafür',
  ],
  'notices.ragRepeatHours': [
    '0e4c',
    'wie oft am ersten Tag an die Lappen erinnert wird, bis sie abgehakt sind; danach einmal am Tag. Annahme',
  ],
  'notices.overheatC': [
    '3fba',
    'Luft in einem Raum oder Gestell, die zu heiß ist; vorbei, wenn sie 5 K darunter liegt. Annahme',
  ],
  'notices.giveUpHours': [
    'c594',
    'so lange wird eine Nachricht, die nicht ankommt, erneut versucht, immer seltener',
  ],
  'notices.mqtt.on': ['7802', 'ob Hinweise als boardcure/<site>/notice hinausgehen'],
  'notices.mqtt.heedsQuietHours': ['1dca', 'ob die Ruhezeit dafür gilt'],
  'notices.webhook.url': [
    '1413',
    'Adresse mit http:// oder https://, an die Hinweise gesendet werden; ohne Angabe keine',
  ],
  'notices.webhook.secret': [
    'c7e7',
    'Schlüssel, mit dem jede Sendung signiert wird (RFC 9421, hmac-sha256), mindestens 16 Zeichen; besser in secretFile oder BOARDCURE_WEBHOOK_SECRET',
  ],
  'notices.webhook.secretFile': ['ecbb', 'Datei mit dem Schlüssel, beim Start gelesen'],
  'notices.webhook.timeoutSeconds': ['36fa', 'so lange wird höchstens auf eine Antwort gewartet'],
  'notices.webhook.heedsQuietHours': ['1dca', 'ob die Ruhezeit dafür gilt'],
  'notices.mail.host': [
    '6cb4',
    'Name des SMTP-Servers, der die Mail annimmt; ohne Angabe keine Mail',
  ],
  'notices.mail.port': ['98df', 'Port des SMTP-Servers'],
  'notices.mail.security': [
    '41ad',
    'starttls besteht auf STARTTLS, tls spricht TLS von Anfang an (Port 465), none sendet als Klartext',
  ],
  'notices.mail.user': ['35dc', 'Name zum Anmelden, wo verlangt'],
  'notices.mail.password': [
    'bab2',
    'das Passwort; besser in passwordFile oder BOARDCURE_MAIL_PASSWORD',
  ],
  'notices.mail.passwordFile': ['2a26', 'Datei mit dem Passwort, beim Start gelesen'],
  'notices.mail.from': ['20e6', 'Adresse, von der die Mail kommt'],
  'notices.mail.to': ['171b', 'Adressen, an die die Mail geht'],
  'notices.mail.timeoutSeconds': ['79e8', 'so lange wird höchstens auf den Server gewartet'],
  'notices.mail.heedsQuietHours': ['1dca', 'ob die Ruhezeit dafür gilt'],
  'work.days': [
    'e372',
    'Tage, an denen Bretter gestrichen und angebracht werden; die Vorausplanung richtet sich danach',
  ],
  'work.from': ['d356', 'Arbeitsbeginn'],
  'work.to': ['31f9', 'Arbeitsende'],
  'work.brushM2PerHour': ['a2f8', 'was alle Hände zusammen streichen; übliche Praxis, ohne Quelle'],
  'work.mountBoardsPerHour': [
    '6db3',
    'Bretter, die alle Hände zusammen anbringen; übliche Praxis, ohne Quelle',
  ],
  'work.goesUpAfter': [
    '437c',
    'wann Bretter vom Gestell an die Hauswand gehen: Spätere Anstriche werden dann dort gestrichen',
  ],
  'work.leastDayMeanC': [
    '9cae',
    'mittlere Temperatur eines Tages, ab der an ihm Streichen geplant wird: Seine Arbeitsstunden liegen dann wahrscheinlich über 5 °C; Annahme',
  ],
  'work.monthlyMeanC': [
    '8de5',
    'mittlere Temperatur im Freien für jeden Monat, Januar zuerst, wie der Wetterdienst sie veröffentlicht: benutzt, bis die Anlage ein eigenes Jahr aufgezeichnet hat',
  ],
  'photos.maxMiB': [
    'bdcc',
    'so viel dürfen die Fotos aller Partien zusammen einnehmen; sie sind Teil der Datenbank und jeder Sicherung',
  ],
  'application.coldestC': ['c468', 'kälter heißt nein; übliche Praxis, ohne Quelle'],
  'application.hottestC': [
    '0b5d',
    'heißer heißt nein; ein Merkblatt aus den USA zu Holzerzeugnissen',
  ],
  'application.verySlowBelowC': [
    '8063',
    'darunter geht ein Anstrich sehr langsam; übliche Praxis, ohne Quelle',
  ],
  'application.slowBelowC': [
    'c459',
    'darunter geht ein Anstrich langsam; übliche Praxis, ohne Quelle',
  ],
  'application.warmAboveC': [
    'e166',
    'darüber bekommt ein Anstrich eine Haut; übliche Praxis, ohne Quelle',
  ],
  'application.dampestRhPercent': [
    '9106',
    'feuchtere Luft heißt nein, beim Streichen und in der ersten Nacht',
  ],
  'application.dewMarginK': ['7313', 'kleinster Abstand der Bretter vom Taupunkt der Luft'],
  'application.dampestWoodPercent': [
    '35f8',
    'feuchtestes Holz, das noch gestrichen wird, an der Oberfläche',
  ],
  'application.boardsMeasured': [
    'e5b8',
    'so viele Bretter werden gemessen, das schlechteste entscheidet; übliche Praxis, ohne Quelle',
  ],
  'application.moistureDays': [
    'af27',
    'so lange gelten die Werte eines Handmessgeräts; eine Annahme',
  ],
  'application.stopBeforeDewHours': [
    '7e78',
    'so lange vor Tau oder Kälte wird der Pinsel weggelegt; ein Merkblatt aus den USA zu Holzerzeugnissen',
  ],
  'application.dryBeforeRainHours': [
    'b6c6',
    'so viel Zeit soll ein Anstrich im Freien vor dem Regen haben; übliche Praxis, ohne Quelle',
  ],
  'application.fromEndMm': ['fd9b', 'wie weit vom Ende gemessen wird; übliche Praxis, ohne Quelle'],
  'trade.hemisphere': ['b692', 'Erdhälfte der Anlage, für den Stand der Sonne'],
  'trade.stockSizes': [
    'b96f',
    'Brettmaße, die als Knöpfe angeboten werden, Breite x Dicke; übliche Praxis, ohne Quelle',
  ],
  'trade.stockLengthsMm': [
    '6964',
    'Brettlängen, die als Knöpfe angeboten werden; übliche Praxis, ohne Quelle',
  ],
  'trade.weatheredAfterDays': [
    '8c0e',
    'rohes Holz, das länger im Freien war, gilt als verwittert; etwa zwei Wochen sind üblich',
  ],
  'trade.tinOldAfterDays': [
    'b2bc',
    'eine Dose, die länger offen ist, härtet langsam; übliche Praxis, ohne Quelle',
  ],
  'trade.lookAfterMinutes': [
    '5f38',
    'wie lange nach einem Anstrich nachzusehen ist, was noch glänzt; übliche Praxis, ohne Quelle',
  ],
  'trade.lookUntilMinutes': ['a99e', 'bis wann spätestens; übliche Praxis, ohne Quelle'],
  'backup.folder': [
    'dc80',
    'wohin die nächtlichen Sicherungen kommen; ohne Angabe `backups` im Datenordner, besser ein Ordner auf einem anderen Datenträger',
  ],
  'backup.keep': [
    'b261',
    'so viele nächtliche Sicherungen werden aufbewahrt, jede so groß wie die Datenbank und ganz geschrieben; 0 macht keine',
  ],
  'backup.at': [
    '98f5',
    'wann; ein Rechner, der da aus war, holt es zu dieser Minute einer Stunde nach, sobald er an ist',
  ],
  'storage.readingDays': [
    '226a',
    'wie lange einzelne Messwerte aufbewahrt werden; ohne Angabe für immer. Ein Jahr mit 20 Sensoren und 3 Größen je Minute braucht etwa 125 MB. Was weiter zurückliegt, behält Tiefst- und Höchstwert jeder Stunde und lässt sich nicht neu berechnen; Messwerte, die dafür noch ankommen, zählen als wiederholt',
  ],
  'storage.hourDays': [
    '51cb',
    'wie lange Tiefstwert, Höchstwert und Summe jeder Stunde aufbewahrt werden, mindestens so lange wie Messwerte; von dem, was weiter zurückliegt, bleiben die jedes Tages',
  ],
  'storage.dayDays': ['539f', 'wie lange die jedes Tages aufbewahrt werden'],
  'storage.lowSpaceMiB': [
    'cb95',
    'bei weniger Platz auf dem Datenträger des Datenordners, oder weniger als einem Zwanzigstel eines kleinen, meldet die Anlage es',
  ],
  'tls.certFile': [
    '0ef3',
    'Zertifikat dieses Rechners als PEM, dahinter die auf dem Weg zu seinem Aussteller; ohne Angabe wird eines erstellt und rechtzeitig erneuert',
  ],
  'tls.keyFile': ['282e', 'sein privater Schlüssel als PEM, nur für den Dienst lesbar'],
  'log.level': ['035e', 'wie viel protokolliert wird, auf standard error'],
};
