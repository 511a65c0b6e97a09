import type { trust as English } from '../en/trust.ts';
import { plural } from '../plural.ts';

export const trust: typeof English = {
  faultBegan: (fault, ago) => `${fault}, begann ${ago}`,

  calibrate: {
    fold: (sensor) => `${sensor} kalibrieren`,
    earlier: (count) =>
      plural('de', count, {
        one: '1 frühere Kalibrierung aufbewahrt, seither berichtigt oder zurückgezogen',
        other: `${count} frühere Kalibrierungen aufbewahrt, seither berichtigt oder zurückgezogen`,
      }),
    another: 'Eine neue Kalibrierung',
    withdraw: 'Zurückziehen',
    correct: 'Berichtigen',

    quantity: 'Was er misst',
    against: 'Gegen was',
    ways: {
      'hand-meter': 'Ein Handmessgerät daneben',
      offset: 'Versatz',
      'two-point': 'Zwei Punkte',
      salts: 'Gesättigte Salze',
      'ice-point': 'Eiswasser',
      'test-resistor': 'Prüfwiderstand',
    },
    waysWithin: {
      'hand-meter': 'ein Handmessgerät daneben',
      offset: 'Versatz',
      'two-point': 'zwei Punkte',
      salts: 'gesättigte Salze',
      'ice-point': 'Eiswasser',
      'test-resistor': 'Prüfwiderstand',
    },
    forAll: (quantity, way, correction) => `${quantity}: ${way}, ${correction}, für alle Messwerte`,
    since: (quantity, way, correction, at) => `${quantity}: ${way}, ${correction}, seit ${at}`,
    until: (quantity, way, correction, at) => `${quantity}: ${way}, ${correction}, bis ${at}`,
    notInForce: (line) => `${line} (jetzt gilt eine andere)`,
    withNote: (line, note) => `${line}. ${note}`,

    holds: 'Gilt',
    holdsChoices: {
      now: 'von jetzt an',
      since: 'von einem Zeitpunkt an',
      ever: 'für alle seine Messwerte, auch die früheren',
    },
    from: 'Ab wann',
    note: 'Notiz, falls nötig',
    keepNew: 'Kalibrieren',
    keepCorrection: 'Berichtigung behalten',

    handMeterShows: 'Das Handmessgerät zeigt',
    sensorSent: 'Der Sensor sendete da',
    readWhen: 'Wann abgelesen',
    readWhenHint:
      'Leer: jetzt. Neben den Sensor halten, bis beide stillstehen. Was der Sensor sendete, wird nachgesehen.',
    readWhenHintCorrected:
      'Für eine andere Zeit das Feld darüber leeren: Was der Sensor da sendete, wird nachgesehen.',
    add: 'Zum Gesendeten addieren',
    pointShown: (point) => `Er zeigt, Punkt ${point}`,
    pointActual: (point) => `So ist es, Punkt ${point}`,
    firstSalt: {
      label: 'Erstes Salz',
      temperature: 'Temperatur über dem ersten Salz',
      shown: 'Anzeige über dem ersten Salz',
    },
    secondSalt: {
      label: 'Zweites Salz',
      temperature: 'Temperatur über dem zweiten Salz',
      shown: 'Anzeige über dem zweiten Salz',
    },
    noSalt: 'keines',
    salts: {
      'sodium-chloride': 'Natriumchlorid (Kochsalz), etwa 75 %',
      'magnesium-chloride': 'Magnesiumchlorid, etwa 33 %',
      'magnesium-nitrate': 'Magnesiumnitrat, etwa 54 %',
      'potassium-chloride': 'Kaliumchlorid, etwa 85 %',
      'potassium-sulfate': 'Kaliumsulfat, etwa 98 %',
      'lithium-chloride': 'Lithiumchlorid, etwa 11 %',
    },
    saltsHint:
      'Ein feuchter Salzbrei in einem geschlossenen Glas, einen halben Tag bei gleichmäßiger Temperatur. Salze von Augen, Essen und Kindern fernhalten.',
    iceShown: 'Er zeigt im Eiswasser',
    iceHint:
      'Zerstoßenes Eis mit wenig Wasser, gerührt; nur für einen Fühler, der nass werden darf.',
    resistor: 'Der Widerstand hat',
    resistorShown: 'Er zeigt mit dem Widerstand zwischen den Anschlüssen',
  },

  compare: {
    chooseTwo: 'Bitte zwei oder mehr Sensoren wählen.',
    needsTwo:
      'Mit zwei oder mehr Sensoren lassen sie sich in einer geschlossenen Kiste vergleichen.',
    about:
      'Alle Sensoren in eine geschlossene Kiste legen, fern von Sonne und Heizung, und eine Nacht liegen lassen. Dann ankreuzen und auf „Vergleichen“ drücken.',
    inTheBox: 'Lag in der Kiste',
    from: 'Zusammen ab',
    to: 'Bis',
    compare: 'Vergleichen',
    nothing: 'In dieser Zeit kam von keinen zweien etwas, das sich vergleichen lässt.',
    sensor: 'Sensor',
    apart: (unit) => `Abstand, ${unit}`,
    offered: (unit) => `Vorschlag, ${unit}`,
    noOffer: 'keiner',
    oddOneOut: 'fällt aus der Reihe',
    whose: 'Wessen Versatz übernommen wird',
    take: 'Diesen Versatz übernehmen',
    taken: (count) =>
      plural('de', count, {
        one: '1 Versatz gilt vom Ende des Vergleichs an. Was gesendet wurde, bleibt, wie es war; er lässt sich berichtigen oder zurückziehen.',
        other: `${count} Versätze gelten vom Ende des Vergleichs an. Was gesendet wurde, bleibt, wie es war; jeder lässt sich berichtigen oder zurückziehen.`,
      }),
  },

  probe: {
    moisture: (percent) => `Stifte: ${percent}`,
    wetterThan: (percent) => `Stifte: außerhalb des Bereichs: feuchter als ${percent}`,
    drierThan: (percent) => `Stifte: außerhalb des Bereichs: trockener als ${percent}`,
    readAs: (timber) => `gelesen als ${timber}`,
    readAsAssumed: (timber) => `gelesen als ${timber} (angenommen: sagen, welches Holz)`,
    woodAt: {
      'own-surface': (temperature) => `Holz bei ${temperature}, eigenes Thermometer`,
      'place-surface': (temperature) => `Holz bei ${temperature}, ein Thermometer an den Brettern`,
      air: (temperature) => `Holz bei ${temperature}, die Luft dort`,
      assumed: (temperature) => `Holz bei ${temperature}, angenommen`,
    },
  },

  traits: {
    fold: (sensor) => `Wie ${sensor} hängt`,
    height: (sensor) => `Höhe von ${sensor}`,
    heightHint: 'Allein und nicht auf der untersten Lage, gilt der Boden als kälter.',
    notSaid: 'keine Angabe',
    heights: {
      'bottom-shelf': 'auf der untersten Lage',
      'eye-height': 'in Augenhöhe',
      'top-shelf': 'auf der obersten Lage',
    },
    timber: (sensor) => `Holz, in dem ${sensor} steckt`,
    timberOfBatch: 'das der Partie dort',
    keep: 'Behalten',
  },
};
