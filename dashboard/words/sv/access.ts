import type { access as English } from '../en/access.ts';

export const access: typeof English = {
  title: 'Tillträde',
  standings: {
    mayEverything: 'Den här enheten är inloggad och får göra allt.',
    mayRecord: 'Den här enheten är inloggad och får anteckna arbete.',
    tablet: 'Det här är en parkopplad väggplatta: den får titta.',
    thisComputer:
      'Ingen PIN-kod är vald: den här datorn får göra allt, alla andra får bara titta.',
    network:
      'Den här enheten får titta, som alla på det lokala nätet. Logga in för att ändra något.',
    networkWithoutPin: 'Ingen PIN-kod är vald: ändringar tas bara emot från själva datorn.',
    closed: 'Här krävs inloggning för att titta.',
    closedWithoutPin: 'Här krävs inloggning för att titta, och ingen PIN-kod är vald än.',
  },
  choosePin: {
    title: 'Välj en PIN-kod',
    whyHere:
      'Med en PIN-kod kan arbete antecknas från vilken telefon som helst i boden. Från och med då frågar även den här datorn efter den.',
    whyCode: 'Programmet skrev ut en kod när det startade. Den visar att det är du som driver det.',
    code: 'Startkod',
    codeHint: 'Programmet skrev ut den när det startade; den ser ut som 7KQ2-9WHD-4TXM',
    current: 'Nuvarande PIN-kod',
    fresh: 'Ny PIN-kod',
    freshHint: 'Minst sex siffror eller bokstäver, ingen följd som 123456',
    set: 'Välj PIN-koden',
    setSecond: 'Välj den andra PIN-koden',
    forgotten: (command) => [
      'Den som har glömt PIN-koden väljer en ny på själva datorn, med ',
      command,
      '.',
    ],
  },
  changePin: {
    title: 'Byt PIN-kod',
    about: 'Den som var inloggad med den gamla får logga in igen.',
  },
  secondPin: {
    title: 'En andra PIN-kod',
    isSet:
      'För dem som antecknar arbete och ska låta inställningar och enheter vara. En är vald.',
    isNotSet:
      'För dem som antecknar arbete och ska låta inställningar och enheter vara. Ingen är vald.',
    remove: 'Ta bort den andra PIN-koden',
  },
  pairing: {
    title: 'Gör det här till en väggplatta',
    about: 'En parkopplad platta får titta så länge ingen kopplar från den, och ändra ingenting.',
    code: 'Parkopplingskod',
    codeHint: 'Görs under Tillträde på en inloggad enhet; gäller i tio minuter',
    pair: 'Parkoppla den här enheten',
    letIn: 'Släpp in en väggplatta',
    name: 'Vad plattan heter',
    makeCode: 'Gör en parkopplingskod',
    typeThere: (name, until) =>
      `Öppna den här sidan, ”Tillträde”, på plattan och skriv för ${name}, före ${until}:`,
  },
  thisDevice: {
    title: 'Den här enheten',
    called: (name) => `Den heter ”${name}” och förblir inloggad så länge den används.`,
    logOut: 'Logga ut',
  },
  devices: {
    title: 'Enheter',
    kinds: { 'log-in': 'Inloggad', tablet: 'Väggplatta' },
    roles: { look: 'får titta', operate: 'får anteckna arbete', own: 'får göra allt' },
    state: (kind, may) => `${kind}, ${may}`,
    stateSeen: (kind, may, ago) => `${kind}, ${may}, sedd ${ago}`,
    thisOne: (name) => `${name} (den här enheten)`,
    end: { 'log-in': 'Logga ut', tablet: 'Koppla från' },
    endNamed: {
      'log-in': (name) => `Logga ut ${name}`,
      tablet: (name) => `Koppla från ${name}`,
    },
    endAll: 'Logga ut överallt',
    endAllSurely: 'Logga ut överallt, även här',
    leave: 'Låt det vara',
  },
  broker: {
    title: 'Vem som får skicka mätvärden',
    external: 'Givarna är anslutna till en annan MQTT-server: namn och lösenord anges där.',
    modes: {
      open: 'Öppen: vem som helst på nätet får skicka mätvärden. Så provar man sig fram.',
      pairing: 'Parkoppling: vem som helst får ännu skicka, medan givarna får sina namn.',
      closed: 'Stängd: bara den som har namn och lösenord får skicka, och bara som sig själv.',
    },
    lookAgain: 'Titta igen',
    noSensor: 'Ingen givare har skickat något de senaste 30 dygnen.',
    pairings: {
      paired: 'Parkopplad: skickar under sitt namn',
      waiting: 'Väntar: har ett lösenord som den inte använder än',
      unpaired: 'Inte parkopplad än',
      mixed: 'Något skickar fortfarande som den här givaren utan lösenordet',
    },
    pairingSent: (state, ago) => `${state}; skickade ${ago}`,
    makePassword: 'Gör ett lösenord',
    makePasswordFor: (sensor) => `Gör ett lösenord till ${sensor}`,
    wrongPassword: (name, ago) => [name, ` kom med fel lösenord, ${ago}.`],
    stray: (name, topic, ago) => [
      name,
      ' skickade till ',
      topic,
      `, som inte är dess eget, ${ago}.`,
    ],
    given: (count) => `Namn som delats ut: ${count}`,
    uses: {
      node: (sensors) => `skickar som ${sensors}`,
      listener: () => 'lyssnar bara',
      forecaster: () => 'skickar en prognos',
    },
    notUsedYet: (use) => `${use}; inte använt än`,
    used: (use, ago) => `${use}; använt ${ago}`,
    takeAway: 'Ta bort',
    takeAwayNamed: (name) => `Ta bort ${name}`,
    takeAwaySurely: 'Ta bort för gott',
    takeAwaySurelyNamed: (name) => `Ta bort ${name} för gott`,
    another: 'Ett annat namn: en brygga, en skärm, en prognos',
    does: 'Vad den gör',
    kinds: {
      node: 'Skickar mätvärden',
      listener: 'Lyssnar bara',
      forecaster: 'Skickar en prognos',
    },
    userName: 'Användarnamn',
    userNameHint: 'Bokstäver a till z, siffror, punkt, bindestreck och understreck',
    sendsFor: 'Givare som den skickar för',
    sendsForHint: 'Deras id, med komma emellan',
    makeLogin: 'Gör ett namn och ett lösenord',
    shownOnce:
      'Lägg in det i noden nu. Det visas bara den här gången; den som tappar bort det tar bort namnet och gör ett nytt.',
    password: 'Lösenord',
    closeTitle: 'Stäng den',
    nothingFallsSilent: 'Varje givare som används skickar under sitt namn: ingenting tystnar.',
    someFallSilent:
      'De här skulle inte längre höras. Parkoppla dem först, eller bocka för dem som får tystna.',
    mayFallSilent: (sensor) => `${sensor} får tystna`,
    listenersSilent: (clients) =>
      `De här lyssnarna utan namn hör kanske ingenting mer: ${clients}`,
    listenersSilentMore: (clients, more) =>
      `De här lyssnarna utan namn hör kanske ingenting mer: ${clients} och ${more} till`,
    close: 'Stäng MQTT-servern',
    open: 'Öppna den för alla igen',
  },
};
