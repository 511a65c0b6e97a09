import type { access as English } from '../en/access.ts';

export const access: typeof English = {
  title: 'Zugang',

  standings: {
    mayEverything: 'Dieses Gerät ist angemeldet und darf alles.',
    mayRecord: 'Dieses Gerät ist angemeldet und darf Arbeit eintragen.',
    tablet: 'Dies ist ein gekoppeltes Wandtablet: Es darf ansehen.',
    thisComputer:
      'Es ist keine PIN gesetzt: Dieser Rechner darf alles, alle anderen dürfen nur ansehen.',
    network: 'Dieses Gerät darf ansehen, wie alle im örtlichen Netz. Zum Ändern anmelden.',
    networkWithoutPin:
      'Es ist keine PIN gesetzt: Änderungen werden nur vom Rechner selbst angenommen.',
    closed: 'Zum Ansehen ist hier eine Anmeldung nötig.',
    closedWithoutPin:
      'Zum Ansehen ist hier eine Anmeldung nötig, und es ist noch keine PIN gesetzt.',
  },

  choosePin: {
    title: 'Eine PIN wählen',
    whyHere:
      'Mit einer PIN lässt sich Arbeit von jedem Telefon im Schuppen eintragen. Von da an fragt auch dieser Rechner danach.',
    whyCode:
      'Der Dienst hat beim Start einen Code ausgegeben. Er zeigt, dass Sie es sind, der ihn betreibt.',
    code: 'Einrichtungscode',
    codeHint: 'Der Dienst hat ihn beim Start ausgegeben; er sieht aus wie 7KQ2-9WHD-4TXM',
    current: 'Jetzige PIN',
    fresh: 'Neue PIN',
    freshHint: 'Mindestens sechs Ziffern oder Buchstaben, keine Reihe wie 123456',
    set: 'PIN setzen',
    setSecond: 'Zweite PIN setzen',
    forgotten: (command) => [
      'Wer die PIN vergessen hat, setzt am Rechner selbst eine neue, mit ',
      command,
      '.',
    ],
  },
  changePin: {
    title: 'PIN ändern',
    about: 'Wer mit der alten angemeldet war, meldet sich neu an.',
  },
  secondPin: {
    title: 'Eine zweite PIN',
    isSet:
      'Für alle, die Arbeit eintragen und Einstellungen und Geräte in Ruhe lassen sollen. Eine ist gesetzt.',
    isNotSet:
      'Für alle, die Arbeit eintragen und Einstellungen und Geräte in Ruhe lassen sollen. Keine ist gesetzt.',
    remove: 'Zweite PIN entfernen',
  },

  pairing: {
    title: 'Zum Wandtablet machen',
    about: 'Ein gekoppeltes Tablet darf ansehen, bis jemand es entkoppelt, und nichts ändern.',
    code: 'Kopplungscode',
    codeHint: 'Entsteht unter „Zugang“ auf einem angemeldeten Gerät; gilt zehn Minuten',
    pair: 'Dieses Gerät koppeln',
    letIn: 'Ein Wandtablet einlassen',
    name: 'Name des Tablets',
    makeCode: 'Kopplungscode erzeugen',
    typeThere: (name, until) =>
      `Auf dem Tablet diese Seite öffnen, „Zugang“, und für ${name} eintippen, bis ${until}:`,
  },

  thisDevice: {
    title: 'Dieses Gerät',
    called: (name) => `Es heißt „${name}“ und bleibt angemeldet, solange es benutzt wird.`,
    logOut: 'Abmelden',
  },
  devices: {
    title: 'Geräte',
    kinds: { 'log-in': 'Angemeldet', tablet: 'Wandtablet' },
    roles: {
      look: 'darf ansehen',
      operate: 'darf Arbeit eintragen',
      own: 'darf alles',
    },
    state: (kind, may) => `${kind}, ${may}`,
    stateSeen: (kind, may, ago) => `${kind}, ${may}, gesehen ${ago}`,
    thisOne: (name) => `${name} (dieses Gerät)`,
    end: { 'log-in': 'Abmelden', tablet: 'Entkoppeln' },
    endNamed: {
      'log-in': (name) => `${name} abmelden`,
      tablet: (name) => `${name} entkoppeln`,
    },
    endAll: 'Überall abmelden',
    endAllSurely: 'Überall abmelden, auch hier',
    leave: 'So lassen',
  },

  broker: {
    title: 'Wer Messwerte senden darf',
    external:
      'Die Sensoren sind an einem anderen Broker: Namen und Passwörter werden dort gesetzt.',
    modes: {
      open: 'Offen: Alle im Netz dürfen Messwerte senden. So probiert man es aus.',
      pairing: 'Koppeln: Noch dürfen alle senden, während die Sensoren ihre Namen bekommen.',
      closed: 'Geschlossen: Nur wer Namen und Passwort hat, darf senden, und nur als er selbst.',
    },
    lookAgain: 'Noch einmal nachsehen',
    noSensor: 'In den letzten 30 Tagen hat kein Sensor etwas gesendet.',
    pairings: {
      paired: 'Gekoppelt: sendet unter seinem Namen',
      waiting: 'Wartet: hat ein Passwort, das er noch nicht benutzt',
      unpaired: 'Noch nicht gekoppelt',
      mixed: 'Etwas sendet noch ohne Passwort als dieser Sensor',
    },
    pairingSent: (state, ago) => `${state}; gesendet ${ago}`,
    makePassword: 'Passwort erzeugen',
    makePasswordFor: (sensor) => `Passwort für ${sensor} erzeugen`,
    wrongPassword: (name, ago) => [name, ` kam mit einem falschen Passwort, ${ago}.`],
    stray: (name, topic, ago) => [
      name,
      ' hat an ',
      topic,
      ` gesendet, was nicht sein eigenes Topic ist, ${ago}.`,
    ],

    given: (count) => `Vergebene Namen: ${count}`,
    uses: {
      node: (sensors) => `sendet als ${sensors}`,
      listener: () => 'hört nur zu',
      forecaster: () => 'sendet eine Vorhersage',
    },
    notUsedYet: (use) => `${use}; noch nicht benutzt`,
    used: (use, ago) => `${use}; benutzt ${ago}`,
    takeAway: 'Wegnehmen',
    takeAwayNamed: (name) => `${name} wegnehmen`,
    takeAwaySurely: 'Endgültig wegnehmen',
    takeAwaySurelyNamed: (name) => `${name} endgültig wegnehmen`,

    another: 'Noch ein Name: ein Gateway, eine Anzeige, eine Vorhersage',
    does: 'Was es tut',
    kinds: {
      node: 'Sendet Messwerte',
      listener: 'Hört nur zu',
      forecaster: 'Sendet eine Vorhersage',
    },
    userName: 'Benutzername',
    userNameHint: 'Buchstaben, Ziffern, Punkt, Bindestrich und Unterstrich',
    sendsFor: 'Sensoren, für die es sendet',
    sendsForHint: 'Ihre Kennungen, durch Kommas getrennt',
    makeLogin: 'Namen und Passwort erzeugen',
    shownOnce:
      'Das jetzt im Knoten eintragen. Es wird nur dieses eine Mal gezeigt; wer es verliert, nimmt den Namen weg und macht einen neuen.',
    password: 'Passwort',

    closeTitle: 'Schließen',
    nothingFallsSilent: 'Jeder benutzte Sensor sendet unter seinem Namen: Nichts verstummt.',
    someFallSilent:
      'Diese würden nicht mehr gehört. Zuerst koppeln oder abhaken, was verstummen darf.',
    mayFallSilent: (sensor) => `${sensor} darf verstummen`,
    listenersSilent: (clients) =>
      `Diese Zuhörer ohne Namen hören vielleicht nichts mehr: ${clients}`,
    listenersSilentMore: (clients, more) =>
      `Diese Zuhörer ohne Namen hören vielleicht nichts mehr: ${clients} und ${more} weitere`,
    close: 'Broker schließen',
    open: 'Wieder für alle öffnen',
  },
};
