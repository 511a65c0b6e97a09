import type { trust as English } from '../en/trust.ts';
import { plural } from '../plural.ts';

export const trust: typeof English = {
  faultBegan: (fault, ago) => `${fault}, alkoi ${ago}`,

  calibrate: {
    fold: (sensor) => `Kalibroi ${sensor}`,
    earlier: (count) =>
      plural('fi', count, {
        one: '1 aiempi kalibrointi tallessa, sittemmin korjattu tai peruttu',
        other: `${count} aiempaa kalibrointia tallessa, sittemmin korjattu tai peruttu`,
      }),
    another: 'Uusi kalibrointi',
    withdraw: 'Peru',
    correct: 'Korjaa',

    quantity: 'Mitä se mittaa',
    against: 'Mihin verrataan',
    ways: {
      'hand-meter': 'Käsimittari sen vieressä',
      offset: 'Siirtymä',
      'two-point': 'Kaksi pistettä',
      salts: 'Kyllästetyt suolat',
      'ice-point': 'Jäävesi',
      'test-resistor': 'Testivastus',
    },
    waysWithin: {
      'hand-meter': 'käsimittari sen vieressä',
      offset: 'siirtymä',
      'two-point': 'kaksi pistettä',
      salts: 'kyllästetyt suolat',
      'ice-point': 'jäävesi',
      'test-resistor': 'testivastus',
    },
    forAll: (quantity, way, correction) => `${quantity}: ${way}, ${correction}, kaikki lukemat`,
    since: (quantity, way, correction, at) => `${quantity}: ${way}, ${correction}, alkaen ${at}`,
    until: (quantity, way, correction, at) => `${quantity}: ${way}, ${correction}, päättyi ${at}`,
    notInForce: (line) => `${line} (nyt on voimassa toinen)`,
    withNote: (line, note) => `${line}. ${note}`,

    holds: 'Voimassa',
    holdsChoices: {
      now: 'tästä hetkestä alkaen',
      since: 'tietystä hetkestä alkaen',
      ever: 'kaikille sen lukemille, myös aiemmille',
    },
    from: 'Mistä alkaen',
    note: 'Huomautus, jos on',
    keepNew: 'Kalibroi',
    keepCorrection: 'Tallenna korjaus',

    handMeterShows: 'Käsimittari näyttää',
    sensorSent: 'Anturi lähetti silloin',
    readWhen: 'Luettu milloin',
    readWhenHint:
      'Tyhjänä: nyt. Pidä mittaria anturin vieressä, kunnes molemmat pysyvät paikallaan. Anturin lähettämä lukema haetaan.',
    readWhenHintCorrected:
      'Jos kyse on muusta ajasta, tyhjennä yllä oleva kenttä: anturin silloin lähettämä lukema haetaan.',
    add: 'Lisätään sen lähettämään',
    pointShown: (point) => `Se näyttää, piste ${point}`,
    pointActual: (point) => `Todellinen, piste ${point}`,
    firstSalt: {
      label: 'Ensimmäinen suola',
      temperature: 'Lämpötila ensimmäisen suolan yllä',
      shown: 'Lukema ensimmäisen suolan yllä',
    },
    secondSalt: {
      label: 'Toinen suola',
      temperature: 'Lämpötila toisen suolan yllä',
      shown: 'Lukema toisen suolan yllä',
    },
    noSalt: 'ei mitään',
    salts: {
      'sodium-chloride': 'Natriumkloridi (ruokasuola), noin 75 %',
      'magnesium-chloride': 'Magnesiumkloridi, noin 33 %',
      'magnesium-nitrate': 'Magnesiumnitraatti, noin 54 %',
      'potassium-chloride': 'Kaliumkloridi, noin 85 %',
      'potassium-sulfate': 'Kaliumsulfaatti, noin 98 %',
      'lithium-chloride': 'Litiumkloridi, noin 11 %',
    },
    saltsHint:
      'Kosteaa suolatahnaa suljetussa purkissa, puoli vuorokautta tasaisessa lämpötilassa. Pidä suolat poissa silmistä ja ruoasta, ja lasten ulottumattomissa.',
    iceShown: 'Se näyttää jäävedessä',
    iceHint: 'Murskattua jäätä ja vähän vettä, sekoitettuna; vain mittapäälle, joka saa kastua.',
    resistor: 'Vastuksen arvo',
    resistorShown: 'Se näyttää, kun vastus on johtimien välissä',
  },

  compare: {
    chooseTwo: 'Valitse vähintään kaksi anturia.',
    needsTwo: 'Kun antureita on vähintään kaksi, niitä voi verrata samassa suljetussa laatikossa.',
    about:
      'Pane kaikki anturit samaan suljettuun laatikkoon, kauas auringosta ja lämmittimestä, ja jätä yöksi. Rastita ne sitten ja paina Vertaa.',
    inTheBox: 'Laatikossa oli',
    from: 'Yhdessä alkaen',
    to: 'Asti',
    compare: 'Vertaa',
    nothing: 'Vertailukelpoista ei tullut siltä ajalta vähintään kahdelta niistä.',
    sensor: 'Anturi',
    apart: (unit) => `Ero, ${unit}`,
    offered: (unit) => `Ehdotus, ${unit}`,
    noOffer: 'ei ole',
    oddOneOut: 'poikkeava',
    whose: 'Kenen siirtymät otetaan',
    take: 'Ota nämä siirtymät',
    taken: (count) =>
      plural('fi', count, {
        one: '1 siirtymä on voimassa vertailun lopusta alkaen. Lähetetty säilyy ennallaan; jokaisen voi korjata tai perua.',
        other: `${count} siirtymää on voimassa vertailun lopusta alkaen. Lähetetty säilyy ennallaan; jokaisen voi korjata tai perua.`,
      }),
  },

  probe: {
    moisture: (percent) => `Piikit: ${percent}`,
    wetterThan: (percent) => `Piikit: mittausalueen ulkopuolella: kosteampi kuin ${percent}`,
    drierThan: (percent) => `Piikit: mittausalueen ulkopuolella: kuivempi kuin ${percent}`,
    readAs: (timber) => `luettu puulajina: ${timber}`,
    readAsAssumed: (timber) => `luettu puulajina: ${timber} (oletus: kerro puulaji)`,
    woodAt: {
      'own-surface': (temperature) => `puu ${temperature}, oma lämpömittari`,
      'place-surface': (temperature) => `puu ${temperature}, lautojen lämpömittari`,
      air: (temperature) => `puu ${temperature}, sikäläinen ilma`,
      assumed: (temperature) => `puu ${temperature}, oletus`,
    },
  },

  traits: {
    fold: (sensor) => `Miten ${sensor} roikkuu`,
    height: (sensor) => `Korkeus: ${sensor}`,
    heightHint: 'Jos se on yksin eikä alimmalla hyllyllä, lattian oletetaan olevan kylmempi.',
    notSaid: 'ei kerrottu',
    heights: {
      'bottom-shelf': 'alimmalla hyllyllä',
      'eye-height': 'silmien korkeudella',
      'top-shelf': 'ylimmällä hyllyllä',
    },
    timber: (sensor) => `Puu, jossa ${sensor} on`,
    timberOfBatch: 'sikäläisen erän puu',
    keep: 'Tallenna',
  },
};
