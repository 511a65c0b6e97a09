import type { access as English } from '../en/access.ts';

export const access: typeof English = {
  title: 'Pääsy',

  standings: {
    mayEverything: 'Tämä laite on kirjautunut ja saa tehdä kaiken.',
    mayRecord: 'Tämä laite on kirjautunut ja saa kirjata töitä.',
    tablet: 'Tämä on paritettu taulutabletti: se saa katsoa.',
    thisComputer:
      'PIN-koodia ei ole asetettu: tämä tietokone saa tehdä kaiken, muut saavat vain katsoa.',
    network:
      'Tämä laite saa katsoa, kuten kaikki paikallisverkossa. Kirjaudu, jos haluat muuttaa jotain.',
    networkWithoutPin:
      'PIN-koodia ei ole asetettu: muutoksia otetaan vastaan vain tietokoneelta itseltään.',
    closed: 'Katsominen vaatii täällä kirjautumisen.',
    closedWithoutPin: 'Katsominen vaatii täällä kirjautumisen, eikä PIN-koodia ole vielä asetettu.',
  },

  choosePin: {
    title: 'Valitse PIN-koodi',
    whyHere:
      'PIN-koodilla töitä voi kirjata millä tahansa puhelimella vajassa. Siitä lähtien myös tämä tietokone kysyy sitä.',
    whyCode:
      'Taustaohjelma tulosti käynnistyessään koodin. Se osoittaa, että sinä pidät sitä käynnissä.',
    code: 'Käyttöönottokoodi',
    codeHint: 'Taustaohjelma tulosti sen käynnistyessään; se näyttää tältä: 7KQ2-9WHD-4TXM',
    current: 'Nykyinen PIN-koodi',
    fresh: 'Uusi PIN-koodi',
    freshHint: 'Vähintään kuusi numeroa tai kirjainta, ei sarjaa kuten 123456',
    set: 'Aseta PIN-koodi',
    setSecond: 'Aseta toinen PIN-koodi',
    forgotten: (command) => [
      'PIN-koodin unohtanut asettaa uuden tietokoneella itsellään komennolla ',
      command,
      '.',
    ],
  },
  changePin: {
    title: 'Vaihda PIN-koodi',
    about: 'Vanhalla koodilla kirjautuneet kirjautuvat uudelleen.',
  },
  secondPin: {
    title: 'Toinen PIN-koodi',
    isSet:
      'Niille, jotka kirjaavat töitä mutta joiden ei kuulu koskea asetuksiin eikä laitteisiin. Koodi on asetettu.',
    isNotSet:
      'Niille, jotka kirjaavat töitä mutta joiden ei kuulu koskea asetuksiin eikä laitteisiin. Koodia ei ole asetettu.',
    remove: 'Poista toinen PIN-koodi',
  },

  pairing: {
    title: 'Tee tästä taulutabletti',
    about:
      'Paritettu tabletti saa katsoa niin kauan, kunnes joku purkaa parituksen, eikä se voi muuttaa mitään.',
    code: 'Parituskoodi',
    codeHint: 'Tehdään kohdassa Pääsy kirjautuneella laitteella; voimassa kymmenen minuuttia',
    pair: 'Parita tämä laite',
    letIn: 'Päästä taulutabletti mukaan',
    name: 'Tabletin nimi',
    makeCode: 'Tee parituskoodi',
    typeThere: (name, until) =>
      `Avaa tabletilla tämä sivu, ”Pääsy”, ja kirjoita sinne tämä koodi (laite: ${name}, voimassa: ${until} asti):`,
  },

  thisDevice: {
    title: 'Tämä laite',
    called: (name) => `Sen nimi on ”${name}”, ja se pysyy kirjautuneena, kun sitä käytetään.`,
    logOut: 'Kirjaudu ulos',
  },
  devices: {
    title: 'Laitteet',
    kinds: { 'log-in': 'Kirjautunut', tablet: 'Taulutabletti' },
    roles: {
      look: 'saa katsoa',
      operate: 'saa kirjata töitä',
      own: 'saa tehdä kaiken',
    },
    state: (kind, may) => `${kind}, ${may}`,
    stateSeen: (kind, may, ago) => `${kind}, ${may}, nähty ${ago}`,
    thisOne: (name) => `${name} (tämä laite)`,
    end: { 'log-in': 'Kirjaa ulos', tablet: 'Pura paritus' },
    endNamed: {
      'log-in': (name) => `Kirjaa ulos: ${name}`,
      tablet: (name) => `Pura paritus: ${name}`,
    },
    endAll: 'Kirjaa kaikki ulos',
    endAllSurely: 'Kirjaa kaikki ulos, myös tämä laite',
    leave: 'Anna olla',
  },

  broker: {
    title: 'Kuka saa julkaista lukemia',
    external: 'Anturit ovat toisella välittäjällä: nimet ja salasanat asetetaan siellä.',
    modes: {
      open: 'Avoin: kuka tahansa verkossa saa julkaista lukemia. Näin sitä kokeillaan.',
      pairing:
        'Paritus: kuka tahansa saa yhä julkaista sillä aikaa, kun antureille annetaan nimet.',
      closed:
        'Suljettu: vain se, jolla on nimi ja salasana, saa julkaista, ja vain omissa nimissään.',
    },
    lookAgain: 'Katso uudelleen',
    noSensor: 'Yksikään anturi ei ole lähettänyt mitään 30 viime päivän aikana.',
    pairings: {
      paired: 'Paritettu: julkaisee nimellään',
      waiting: 'Odottaa: sillä on salasana, jota se ei vielä käytä',
      unpaired: 'Ei vielä paritettu',
      mixed: 'Jokin julkaisee yhä tämän anturin nimissä ilman salasanaa',
    },
    pairingSent: (state, ago) => `${state}; lähetti ${ago}`,
    makePassword: 'Tee salasana',
    makePasswordFor: (sensor) => `Tee salasana anturille ${sensor}`,
    wrongPassword: (name, ago) => [name, ` yritti väärällä salasanalla, ${ago}.`],
    stray: (name, topic, ago) => [
      name,
      ' lähetti aiheeseen ',
      topic,
      `, joka ei ole sen oma, ${ago}.`,
    ],

    given: (count) => `Annettuja nimiä: ${count}`,
    uses: {
      node: (sensors) => `julkaisee nimillä: ${sensors}`,
      listener: () => 'vain kuuntelee',
      forecaster: () => 'lähettää ennusteen',
    },
    notUsedYet: (use) => `${use}; ei vielä käytetty`,
    used: (use, ago) => `${use}; käytetty ${ago}`,
    takeAway: 'Poista',
    takeAwayNamed: (name) => `Poista ${name}`,
    takeAwaySurely: 'Poista lopullisesti',
    takeAwaySurelyNamed: (name) => `Poista lopullisesti: ${name}`,

    another: 'Muu nimi: yhdyskäytävä, näyttö, ennuste',
    does: 'Mitä se tekee',
    kinds: {
      node: 'Lähettää lukemia',
      listener: 'Vain kuuntelee',
      forecaster: 'Lähettää ennusteen',
    },
    userName: 'Käyttäjänimi',
    userNameHint: 'Kirjaimia, numeroita, piste, viiva ja alaviiva',
    sendsFor: 'Anturit, joiden puolesta se lähettää',
    sendsForHint: 'Niiden tunnukset pilkuin erotettuina',
    makeLogin: 'Tee nimi ja salasana',
    shownOnce:
      'Vie tämä laitteeseen nyt. Se näytetään vain tämän kerran; jos se katoaa, poista nimi ja tee uusi.',
    password: 'Salasana',

    closeTitle: 'Sulje se',
    nothingFallsSilent: 'Jokainen käytössä oleva anturi julkaisee nimellään: mikään ei vaikene.',
    someFallSilent:
      'Näitä ei enää kuultaisi. Parita ne ensin, tai rastita ne, jotka saavat vaieta.',
    mayFallSilent: (sensor) => `${sensor} saa vaieta`,
    listenersSilent: (clients) =>
      `Nämä nimettömät kuuntelijat eivät ehkä enää kuule mitään: ${clients}`,
    listenersSilentMore: (clients, more) =>
      `Nämä nimettömät kuuntelijat eivät ehkä enää kuule mitään: ${clients} ja vielä ${more}`,
    close: 'Sulje välittäjä',
    open: 'Avaa se taas kaikille',
  },
};
