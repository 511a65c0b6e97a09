import type { SettingDescriptions } from '../setting-descriptions.ts';

/** What each setting does. The names of settings and their values stay as the file has them. */
export const settingDescriptions: SettingDescriptions = {
  data: ['ead4', 'mappe som inneholder databasen'],
  site: ['f1c0', 'navnet på dette anlegget i MQTT-emner'],
  timeZone: [
    'fb9b',
    'IANA-navnet på tidssonen som dager og klokkeslett gjelder i; datamaskinens egen når det utelates',
  ],
  language: [
    '825a',
    'språk for meldinger og for oppsummeringen om morgenen: en, sv, de, nb eller fi; hver side taler leserens språk',
  ],
  'access.look': [
    'a32c',
    'open: alle på det lokale nettet kan se; log-in: å se krever en PIN-kode eller et paret brett så snart en PIN-kode er valgt, og før det kan bare selve datamaskinen se',
  ],
  'access.idleHours': ['ab81', 'en innlogging slutter når den ikke har vært brukt på så lenge'],
  'access.longestDays': [
    '2250',
    'en innlogging slutter uansett etter så lang tid; parede brett blir værende til de fjernes',
  ],
  'http.host': ['e214', 'adressen sidene leveres på'],
  'http.port': ['32c1', '0 tar en ledig port'],
  'http.maxStreams': ['9286', 'så mange sider holdes oppdatert samtidig; én til avvises'],
  'http.names': [
    'a063',
    'navn utover det egne som sidene åpnes under, for eksempel shed.example; forespørsler under andre navn avvises. IP-adresser og localhost virker alltid',
  ],
  'http.tls': ['d245', 'om sidene leveres over TLS (https); se avsnittet tls'],
  'http.maxRequestsPerMinute': [
    'db53',
    'så mange forespørsler fra én enhet besvares; selve datamaskinen telles ikke',
  ],
  'http.maxConnections': [
    '7a3c',
    'så mange forbindelser er åpne samtidig; én enhet kan ha en fjerdedel av dem',
  ],
  'http.requestSeconds': [
    '7ad6',
    'lengste tid før en forespørsel har kommet helt inn; hodet må være inne på halve tiden',
  ],
  'mqtt.host': ['bb26', 'adressen til den innebygde MQTT-tjeneren'],
  'mqtt.port': ['32c1', '0 tar en ledig port'],
  'mqtt.tlsPort': [
    'f2a7',
    'den innebygde MQTT-tjenerens port for TLS, som oftest 8883; ingen når den utelates. Se avsnittet tls',
  ],
  'mqtt.plain': [
    '677d',
    'om den innebygde MQTT-tjeneren også lytter uten TLS; false bare sammen med en tlsPort',
  ],
  'mqtt.external': [
    '7767',
    'en annen MQTT-tjener som mqtt://host:port; den innebygde er da slått av',
  ],
  'mqtt.clientId': [
    'bdd2',
    'navnet på økten hos en annen MQTT-tjener; lages av anleggets navn når det utelates',
  ],
  'mqtt.maxSensors': ['555d', 'så mange sensorer kjennes på det meste; målinger fra flere avvises'],
  'mqtt.maxPayloadBytes': ['4d29', 'en større melding avvises som måling'],
  'mqtt.maxPacketBytes': [
    'df69',
    'den innebygde MQTT-tjeneren leser ingen større pakke: i stedet brytes forbindelsen',
  ],
  'mqtt.maxConnections': [
    '1b5f',
    'så mange forbindelser har den innebygde MQTT-tjeneren åpne samtidig',
  ],
  'mqtt.connectSeconds': [
    '55a4',
    'lengste tid mellom å koble seg til den innebygde MQTT-tjeneren og å si CONNECT',
  ],
  'mqtt.maxUnderWay': [
    'cd6a',
    'så mange meldinger kan vente på disken samtidig; over det leser den innebygde MQTT-tjeneren ikke fra noen avsender før noen er skrevet',
  ],
  'mqtt.maxUnreadBytes': [
    'e004',
    'så mye kan vente i den innebygde MQTT-tjeneren på en klient som ikke leser; over det brytes forbindelsen',
  ],
  'mqtt.maxRetained': [
    '04a9',
    'så mange emner tar den innebygde MQTT-tjeneren vare på den siste meldingen fra, til klientene',
  ],
  'discovery.maxTopics': [
    'a251',
    'så mange emner som ingen regel kjenner, huskes med de siste meldingene sine, i minnet, for å sette opp sensorer; 0 husker ingen',
  ],
  'discovery.maxBytes': ['92f7', 'så mye av en melding huskes; fem meldinger fra hvert emne'],
  'discovery.maxRules': ['d12e', 'så mange emneregler kan lages; hvert emne sammenlignes med alle'],
  'commit.spacingMs': [
    '95f4',
    'så lenge venter en måling på det meste på andre ved jevn strøm før den skrives og kvitteres; den første etter en stille stund, støt, det som sendes på nytt og den som venter på svar, blir ikke utsatt. Det skåner et SD-kort: ved én måling i sekundet skriver 5000 omtrent 180 MB om dagen (opptil det dobbelte er sett ved siden av mye annen skriving), 2000 omtrent 330, 0 omtrent 600; ved 20 målinger i sekundet skriver 5000 omtrent 430 til 620 MB om dagen, 2000 omtrent 1000 og 1000 omtrent 1400. Mange noder gir opp etter 10 s',
  ],
  'commit.groupSize': [
    '0b32',
    'når så mange målinger venter, blir skrivingen ikke utsatt lenger, uansett avstanden',
  ],
  'cure.ruling': ['6359', 'takten som vurderingene går etter; den andre føres ved siden av'],
  'cure.datumC': ['5d4d', 'temperaturen som summen av gradtimer står stille under'],
  'cure.activationEnergyJPerMol': ['71b7', 'aktiveringsenergien i Arrhenius-takten'],
  'cure.maxGapHours': ['db16', 'lengste tid mellom målinger som ennå teller'],
  'cure.capC': [
    'caef',
    'det som er varmere enn dette, legger ingenting til det vurderingene teller: et hett, feitt strøk får skinn',
  ],
  'cure.boardSpread': [
    '2b7e',
    'spredningen mellom bordene i ett strøk, som standardavviket til logaritmen av det de trenger; over 0 går vurderingene etter den tregeste tidelen av bordene der følertester er gjort på et middels bord',
  ],
  'cure.testAt': ['9942', 'sannsynligheten som åpner for en test'],
  'cure.readyAt': ['52cf', 'sannsynligheten som sier klart'],
  'solvent.limitPpm': [
    '86ca',
    'grenseverdi for terpentin etter dine lokale regler; den laveste publiserte, 20 ppm, når den utelates',
  ],
  'place.floorShelfColderK': [
    '544e',
    'så mye kaldere antas nederste hylle i et rom eller en reol å være der bare én sensor henger og ikke på den hyllen; det holder penselen tilbake nær duggpunktet og endrer ingen sum. 0 der du har sett etter',
  ],
  'notices.quietHours.from': ['4dee', 'fra da av blir folk spart'],
  'notices.quietHours.to': ['4a48', 'til da; det samme som from: aldri'],
  'notices.digestAt': [
    'd73b',
    'når dagen som kommer, oppsummeres; aldri der «Ingenting» er valgt på siden: filen har ikke noe ord for det',
  ],
  'notices.ragRepeatHours': [
    '0e4c',
    'hvor ofte linjen om fillene gjentas det første døgnet til den er krysset av; deretter én gang om dagen. Antakelse',
  ],
  'notices.overheatC': [
    '3fba',
    'luft i et rom eller en reol som er for het; over når den er 5 K lavere. Antakelse',
  ],
  'notices.giveUpHours': [
    'c594',
    'så lenge forsøkes en melding som ikke kommer fram, på nytt, stadig sjeldnere',
  ],
  'notices.mqtt.on': ['7802', 'om meldinger går ut som boardcure/<site>/notice'],
  'notices.mqtt.heedsQuietHours': ['1dca', 'om de stille timene gjelder for det'],
  'notices.webhook.url': [
    '1413',
    'adresse med http:// eller https:// som meldinger sendes til; ingen når den utelates',
  ],
  'notices.webhook.secret': [
    'c7e7',
    'nøkkelen som hver sending signeres med (RFC 9421, hmac-sha256), minst 16 tegn; heller i secretFile eller BOARDCURE_WEBHOOK_SECRET',
  ],
  'notices.webhook.secretFile': ['ecbb', 'fil som inneholder nøkkelen, leses ved oppstart'],
  'notices.webhook.timeoutSeconds': ['36fa', 'så lenge ventes det på det meste på svar'],
  'notices.webhook.heedsQuietHours': ['1dca', 'om de stille timene gjelder for det'],
  'notices.mail.host': [
    '6cb4',
    'navnet på SMTP-tjeneren som tar imot posten; ingen post når det utelates',
  ],
  'notices.mail.port': ['98df', 'SMTP-tjenerens port'],
  'notices.mail.security': [
    '41ad',
    'starttls krever STARTTLS, tls taler TLS fra starten av (port 465), none sender som klartekst',
  ],
  'notices.mail.user': ['35dc', 'navn å logge inn med, der det kreves'],
  'notices.mail.password': [
    'bab2',
    'passordet; heller i passwordFile eller BOARDCURE_MAIL_PASSWORD',
  ],
  'notices.mail.passwordFile': ['2a26', 'fil som inneholder passordet, leses ved oppstart'],
  'notices.mail.from': ['20e6', 'adressen posten kommer fra'],
  'notices.mail.to': ['171b', 'adresser posten går til'],
  'notices.mail.timeoutSeconds': ['79e8', 'så lenge ventes det på det meste på tjeneren'],
  'notices.mail.heedsQuietHours': ['1dca', 'om de stille timene gjelder for det'],
  'work.days': ['e372', 'dager da bord males og settes opp; planen framover går etter dem'],
  'work.from': ['d356', 'arbeidet begynner'],
  'work.to': ['31f9', 'arbeidet slutter'],
  'work.brushM2PerHour': ['a2f8', 'hva alle hender maler til sammen; vanlig i faget, uten kilde'],
  'work.mountBoardsPerHour': [
    '6db3',
    'bord som alle hender setter opp til sammen; vanlig i faget, uten kilde',
  ],
  'work.goesUpAfter': ['437c', 'når bordene går fra reolen til veggen: senere strøk males da der'],
  'work.leastDayMeanC': [
    '9cae',
    'middeltemperatur for en dag fra og med hvilken det planlegges å male da: arbeidstimene er da trolig over 5 °C; antakelse',
  ],
  'work.monthlyMeanC': [
    '8de5',
    'middeltemperatur utendørs for hver måned, januar først, slik værtjenesten publiserer den: brukes til anlegget har et eget år med målinger',
  ],
  'photos.maxMiB': [
    'bdcc',
    'så mye kan bildene av alle partier ta til sammen; de er en del av databasen og av hver sikkerhetskopi',
  ],
  'application.coldestC': ['c468', 'kaldere enn dette er nei; vanlig i faget, uten kilde'],
  'application.hottestC': [
    '0b5d',
    'hetere enn dette er nei; et amerikansk faktaark om treprodukter',
  ],
  'application.verySlowBelowC': [
    '8063',
    'under dette går et strøk svært sakte; vanlig i faget, uten kilde',
  ],
  'application.slowBelowC': ['c459', 'under dette går et strøk sakte; vanlig i faget, uten kilde'],
  'application.warmAboveC': ['e166', 'over dette får et strøk skinn; vanlig i faget, uten kilde'],
  'application.dampestRhPercent': [
    '9106',
    'fuktigere luft er nei, ved penselen og den første natten',
  ],
  'application.dewMarginK': ['7313', 'minste avstand fra bordene til luftens duggpunkt'],
  'application.dampestWoodPercent': ['35f8', 'våteste trevirke som males, i overflaten'],
  'application.boardsMeasured': [
    'e5b8',
    'så mange bord måles, og det dårligste avgjør; vanlig i faget, uten kilde',
  ],
  'application.moistureDays': ['af27', 'så lenge gjelder verdiene fra en håndmåler; en antakelse'],
  'application.stopBeforeDewHours': [
    '7e78',
    'penselen legges ned så lenge før dugg eller kulde; et amerikansk faktaark om treprodukter',
  ],
  'application.dryBeforeRainHours': [
    'b6c6',
    'så lang tid skal et strøk utendørs ha fått før regn; vanlig i faget, uten kilde',
  ],
  'application.fromEndMm': ['fd9b', 'hvor langt fra enden det måles; vanlig i faget, uten kilde'],
  'trade.hemisphere': ['b692', 'anleggets halvkule, for hvor solen står'],
  'trade.stockSizes': [
    'b96f',
    'bordmål som tilbys som knapper, bredde x tykkelse; vanlig i faget, uten kilde',
  ],
  'trade.stockLengthsMm': [
    '6964',
    'bordlengder som tilbys som knapper; vanlig i faget, uten kilde',
  ],
  'trade.weatheredAfterDays': [
    '8c0e',
    'bart trevirke som har vært ute lenger, regnes som værgrått; omtrent to uker er vanlig',
  ],
  'trade.tinOldAfterDays': [
    'b2bc',
    'en boks som har vært åpen lenger, herder sakte; vanlig i faget, uten kilde',
  ],
  'trade.lookAfterMinutes': [
    '5f38',
    'hvor lenge etter et strøk man skal se etter det som ennå blinker; vanlig i faget, uten kilde',
  ],
  'trade.lookUntilMinutes': ['a99e', 'når det senest skal være gjort; vanlig i faget, uten kilde'],
  'backup.folder': [
    'dc80',
    'der nattlige sikkerhetskopier legges; `backups` i datamappen når den utelates, heller en mappe på en annen disk',
  ],
  'backup.keep': [
    'b261',
    'så mange nattlige sikkerhetskopier beholdes, hver like stor som databasen og skrevet i sin helhet; 0 lager ingen',
  ],
  'backup.at': [
    '98f5',
    'når; en datamaskin som var av da, tar det igjen ved dette minuttet i en time når den er på',
  ],
  'storage.readingDays': [
    '226a',
    'hvor lenge enkeltmålinger beholdes; for alltid når den utelates. Et år med 20 sensorer og 3 størrelser i minuttet tar omtrent 125 MB. Det som ligger lenger tilbake, beholder laveste og høyeste verdi for hver time og kan ikke regnes om; målinger som kommer inn for den tiden, telles som gjentatte',
  ],
  'storage.hourDays': [
    '51cb',
    'hvor lenge laveste, høyeste og sum for hver time beholdes, minst så lenge som målinger; av det som ligger lenger tilbake, blir de for hver dag værende',
  ],
  'storage.dayDays': ['539f', 'hvor lenge de for hver dag beholdes'],
  'storage.lowSpaceMiB': [
    'cb95',
    'med mindre plass enn dette på datamappens disk, eller enn en tjuedel av en liten disk, sier anlegget fra',
  ],
  'tls.certFile': [
    '0ef3',
    'datamaskinens sertifikat som PEM, fulgt av sertifikatene på veien til utstederen; ett lages og holdes ferskt når det utelates',
  ],
  'tls.keyFile': ['282e', 'den private nøkkelen til det som PEM, lesbar bare for programmet'],
  'log.level': ['035e', 'hvor mye som logges, på standard error'],
};
