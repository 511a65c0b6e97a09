import type { SettingDescriptions } from '../setting-descriptions.ts';

/** What each setting does. The names of settings and their values stay as the file has them. */
export const settingDescriptions: SettingDescriptions = {
  data: ['ead4', 'mapp som innehåller databasen'],
  site: ['f1c0', 'namnet på den här anläggningen i MQTT-ämnen'],
  timeZone: [
    'fb9b',
    'IANA-namnet på tidszonen för dagar och klockslag; datorns egen om det utelämnas',
  ],
  language: [
    '825a',
    'språk för meddelanden och för sammanfattningen på morgonen: en, sv, de, nb eller fi; varje sida talar sin läsares språk',
  ],
  'access.look': [
    'a32c',
    'open: alla på det lokala nätet får titta; log-in: för att titta krävs en PIN-kod eller en parkopplad platta så snart en PIN-kod är vald, dessförinnan får bara själva datorn titta',
  ],
  'access.idleHours': ['ab81', 'en inloggning upphör när den inte har använts på så länge'],
  'access.longestDays': [
    '2250',
    'en inloggning upphör i vilket fall efter så lång tid; parkopplade plattor får stanna tills de tas bort',
  ],
  'http.host': ['e214', 'adress som sidorna lämnas ut på'],
  'http.port': ['32c1', '0 tar en ledig port'],
  'http.maxStreams': ['9286', 'så många sidor hålls uppdaterade samtidigt; ytterligare en avvisas'],
  'http.names': [
    'a063',
    'namn utöver det egna som sidorna öppnas under, till exempel shed.example; förfrågningar under andra namn avvisas. IP-adresser och localhost fungerar alltid',
  ],
  'http.tls': ['d245', 'om sidorna lämnas ut över TLS (https); se avsnittet tls'],
  'http.maxRequestsPerMinute': [
    'db53',
    'så många förfrågningar från en enhet besvaras; själva datorn räknas inte',
  ],
  'http.maxConnections': [
    '7a3c',
    'så många anslutningar är öppna samtidigt; en enhet får ha en fjärdedel av dem',
  ],
  'http.requestSeconds': [
    '7ad6',
    'längsta tid tills en förfrågan har kommit in helt, dess huvud inom hälften av tiden',
  ],
  'mqtt.host': ['bb26', 'den inbyggda MQTT-serverns adress'],
  'mqtt.port': ['32c1', '0 tar en ledig port'],
  'mqtt.tlsPort': [
    'f2a7',
    'den inbyggda MQTT-serverns port för TLS, oftast 8883; ingen om det utelämnas. Se avsnittet tls',
  ],
  'mqtt.plain': [
    '677d',
    'om den inbyggda MQTT-servern lyssnar även utan TLS; false bara tillsammans med en tlsPort',
  ],
  'mqtt.external': [
    '7767',
    'en annan MQTT-server som mqtt://host:port; den inbyggda är då avstängd',
  ],
  'mqtt.clientId': [
    'bdd2',
    'sessionens namn hos en annan MQTT-server; bildas av anläggningens namn om det utelämnas',
  ],
  'mqtt.maxSensors': [
    '555d',
    'så många givare känns som mest; mätvärden från ytterligare givare avvisas',
  ],
  'mqtt.maxPayloadBytes': ['4d29', 'ett större meddelande avvisas som mätvärde'],
  'mqtt.maxPacketBytes': [
    'df69',
    'den inbyggda MQTT-servern läser inga större paket: i stället bryts anslutningen',
  ],
  'mqtt.maxConnections': [
    '1b5f',
    'så många anslutningar har den inbyggda MQTT-servern öppna samtidigt',
  ],
  'mqtt.connectSeconds': [
    '55a4',
    'längsta tid mellan att ansluta till den inbyggda MQTT-servern och att säga CONNECT',
  ],
  'mqtt.maxUnderWay': [
    'cd6a',
    'så många meddelanden får vänta på disken samtidigt; över det läser den inbyggda MQTT-servern inte från någon avsändare förrän några är skrivna',
  ],
  'mqtt.maxUnreadBytes': [
    'e004',
    'så mycket får vänta i den inbyggda MQTT-servern på en klient som inte läser; över det bryts dess anslutning',
  ],
  'mqtt.maxRetained': [
    '04a9',
    'så många ämnen sparar den inbyggda MQTT-servern det senaste meddelandet av åt sina klienter',
  ],
  'discovery.maxTopics': [
    'a251',
    'så många ämnen som ingen regel känner minns programmet, med deras senaste meddelanden, i arbetsminnet, för att ställa in givare; 0 minns inga',
  ],
  'discovery.maxBytes': [
    '92f7',
    'så mycket av ett meddelande minns programmet; fem meddelanden för varje ämne',
  ],
  'discovery.maxRules': ['d12e', 'så många ämnesregler kan göras; varje ämne jämförs med alla'],
  'commit.spacingMs': [
    '95f4',
    'så länge väntar ett mätvärde som längst på andra vid jämnt flöde innan det skrivs och kvitteras; det första efter en lugn stund, skurar, eftersänt och den som väntar på svar skjuts inte upp. Det skonar ett SD-kort: vid ett mätvärde i sekunden skriver 5000 ungefär 180 MB om dygnet (upp till dubbelt så mycket har setts vid sidan av mycket annat skrivande), 2000 ungefär 330, 0 ungefär 600; vid 20 mätvärden i sekunden skriver 5000 ungefär 430 till 620 MB om dygnet, 2000 ungefär 1000 och 1000 ungefär 1400. Många noder ger upp efter 10 s',
  ],
  'commit.groupSize': [
    '0b32',
    'när så många mätvärden väntar skjuts skrivningen inte upp längre, oavsett avståndet',
  ],
  'cure.ruling': ['6359', 'takten som beskeden följer; den andra räknas vid sidan av'],
  'cure.datumC': ['5d4d', 'temperatur under vilken summan av gradtimmar står stilla'],
  'cure.activationEnergyJPerMol': ['71b7', 'aktiveringsenergin i Arrhenius takt'],
  'cure.maxGapHours': ['db16', 'längsta tid mellan mätvärden som ännu räknas'],
  'cure.capC': [
    'caef',
    'det som är varmare än så lägger inget till det som beskeden räknar: en het, fet strykning får skinn',
  ],
  'cure.boardSpread': [
    '2b7e',
    'spridning mellan brädorna i en strykning, som standardavvikelsen för logaritmen av vad de behöver; över 0 går beskeden efter den långsammaste tiondelen av brädorna där känselprov har gjorts på en medelgod bräda',
  ],
  'cure.testAt': ['9942', 'sannolikhet från vilken ett prov är värt att göra'],
  'cure.readyAt': ['52cf', 'sannolikhet från vilken det sägs vara klart'],
  'solvent.limitPpm': [
    '86ca',
    'gränsvärde för terpentin enligt dina lokala regler; det lägsta publicerade, 20 ppm, om det utelämnas',
  ],
  'place.floorShelfColderK': [
    '544e',
    'så mycket kallare antas understa hyllan i ett rum eller ställ vara där en enda givare hänger och inte på den hyllan; det håller tillbaka penseln nära daggpunkten och ändrar ingen summa. 0 där du har sett efter',
  ],
  'notices.quietHours.from': ['4dee', 'från och med då skonas folk'],
  'notices.quietHours.to': ['4a48', 'till och med då; samma som from: aldrig'],
  'notices.digestAt': [
    'd73b',
    'när dagen som kommer sammanfattas; aldrig där ”Inget” är valt på sidan: filen har inget ord för det',
  ],
  'notices.ragRepeatHours': [
    '0e4c',
    'hur ofta raden om trasorna upprepas det första dygnet tills den är avbockad; därefter en gång om dagen. Antagande',
  ],
  'notices.overheatC': [
    '3fba',
    'luft i ett rum eller ställ som är för het; över när den är 5 K lägre. Antagande',
  ],
  'notices.giveUpHours': [
    'c594',
    'så länge försöks ett meddelande som inte kommer fram på nytt, allt mer sällan',
  ],
  'notices.mqtt.on': ['7802', 'om meddelanden går ut som boardcure/<site>/notice'],
  'notices.mqtt.heedsQuietHours': ['1dca', 'om de tysta timmarna gäller för det'],
  'notices.webhook.url': [
    '1413',
    'adress med http:// eller https:// som meddelanden skickas till; ingen om det utelämnas',
  ],
  'notices.webhook.secret': [
    'c7e7',
    'nyckel som varje sändning signeras med (RFC 9421, hmac-sha256), minst 16 tecken; hellre i secretFile eller BOARDCURE_WEBHOOK_SECRET',
  ],
  'notices.webhook.secretFile': ['ecbb', 'fil som innehåller nyckeln, läses vid starten'],
  'notices.webhook.timeoutSeconds': ['36fa', 'så länge väntas som längst på svar'],
  'notices.webhook.heedsQuietHours': ['1dca', 'om de tysta timmarna gäller för det'],
  'notices.mail.host': [
    '6cb4',
    'namnet på den SMTP-server som tar emot posten; ingen post om det utelämnas',
  ],
  'notices.mail.port': ['98df', 'SMTP-serverns port'],
  'notices.mail.security': [
    '41ad',
    'starttls kräver kryptering med STARTTLS, tls talar TLS från början (port 465), none skickar som klartext',
  ],
  'notices.mail.user': ['35dc', 'namn att logga in med, där det krävs'],
  'notices.mail.password': [
    'bab2',
    'lösenordet; hellre i passwordFile eller BOARDCURE_MAIL_PASSWORD',
  ],
  'notices.mail.passwordFile': ['2a26', 'fil som innehåller lösenordet, läses vid starten'],
  'notices.mail.from': ['20e6', 'adress som posten kommer från'],
  'notices.mail.to': ['171b', 'adresser som posten går till'],
  'notices.mail.timeoutSeconds': ['79e8', 'så länge väntas som längst på servern'],
  'notices.mail.heedsQuietHours': ['1dca', 'om de tysta timmarna gäller för det'],
  'work.days': ['e372', 'dagar då brädor stryks och sätts upp; planen framåt följer dem'],
  'work.from': ['d356', 'arbetet börjar'],
  'work.to': ['31f9', 'arbetet slutar'],
  'work.brushM2PerHour': [
    'a2f8',
    'vad alla händer stryker tillsammans; vanligt i yrket, utan källa',
  ],
  'work.mountBoardsPerHour': [
    '6db3',
    'brädor som alla händer sätter upp tillsammans; vanligt i yrket, utan källa',
  ],
  'work.goesUpAfter': [
    '437c',
    'när brädorna lämnar stället för väggen: senare strykningar görs då där',
  ],
  'work.leastDayMeanC': [
    '9cae',
    'medeltemperatur för ett dygn från vilken det planeras att stryka då: arbetstimmarna är då troligen över 5 °C; antagande',
  ],
  'work.monthlyMeanC': [
    '8de5',
    'medeltemperatur utomhus för varje månad, januari först, som vädertjänsten publicerar den: används tills anläggningen har ett eget års mätningar',
  ],
  'photos.maxMiB': [
    'bdcc',
    'så mycket får fotona av alla partier ta tillsammans; de är en del av databasen och av varje säkerhetskopia',
  ],
  'application.coldestC': ['c468', 'kallare än så är nej; vanligt i yrket, utan källa'],
  'application.hottestC': [
    '0b5d',
    'hetare än så är nej; ett amerikanskt faktablad om träprodukter',
  ],
  'application.verySlowBelowC': [
    '8063',
    'under det går en strykning mycket långsamt; vanligt i yrket, utan källa',
  ],
  'application.slowBelowC': [
    'c459',
    'under det går en strykning långsamt; vanligt i yrket, utan källa',
  ],
  'application.warmAboveC': [
    'e166',
    'över det får en strykning skinn; vanligt i yrket, utan källa',
  ],
  'application.dampestRhPercent': [
    '9106',
    'fuktigare luft är nej, vid penseln och under den första natten',
  ],
  'application.dewMarginK': ['7313', 'minsta avstånd från brädorna till luftens daggpunkt'],
  'application.dampestWoodPercent': ['35f8', 'våtaste virke som stryks, i ytan'],
  'application.boardsMeasured': [
    'e5b8',
    'så många brädor mäts, och den sämsta avgör; vanligt i yrket, utan källa',
  ],
  'application.moistureDays': ['af27', 'så länge gäller en handmätares värden; ett antagande'],
  'application.stopBeforeDewHours': [
    '7e78',
    'penseln läggs ned så lång tid före dagg eller kyla; ett amerikanskt faktablad om träprodukter',
  ],
  'application.dryBeforeRainHours': [
    'b6c6',
    'så lång tid ska en strykning utomhus ha fått före regn; vanligt i yrket, utan källa',
  ],
  'application.fromEndMm': ['fd9b', 'hur långt från änden det mäts; vanligt i yrket, utan källa'],
  'trade.hemisphere': ['b692', 'anläggningens halvklot, för var solen står'],
  'trade.stockSizes': [
    'b96f',
    'brädmått som erbjuds som knappar, bredd x tjocklek; vanligt i yrket, utan källa',
  ],
  'trade.stockLengthsMm': [
    '6964',
    'brädlängder som erbjuds som knappar; vanligt i yrket, utan källa',
  ],
  'trade.weatheredAfterDays': [
    '8c0e',
    'bart virke som stått utomhus längre räknas som grånat; omkring två veckor är vanligt',
  ],
  'trade.tinOldAfterDays': [
    'b2bc',
    'en burk som varit öppen längre härdar långsamt; vanligt i yrket, utan källa',
  ],
  'trade.lookAfterMinutes': [
    '5f38',
    'hur lång tid efter en strykning man ska titta efter det som ännu blänker; vanligt i yrket, utan källa',
  ],
  'trade.lookUntilMinutes': ['a99e', 'när det senast ska vara gjort; vanligt i yrket, utan källa'],
  'backup.folder': [
    'dc80',
    'dit nattliga säkerhetskopior läggs; `backups` i datamappen om det utelämnas, hellre en mapp på en annan disk',
  ],
  'backup.keep': [
    'b261',
    'så många nattliga säkerhetskopior sparas, var och en så stor som databasen och skriven i sin helhet; 0 gör inga',
  ],
  'backup.at': [
    '98f5',
    'när; en dator som då var av gör det i efterhand vid den här minuten i en timme när den är på',
  ],
  'storage.readingDays': [
    '226a',
    'hur länge enskilda mätvärden sparas; för alltid om det utelämnas. Ett år med 20 givare och 3 storheter i minuten tar ungefär 125 MB. Det som ligger längre tillbaka behåller lägsta och högsta värde för varje timme och kan inte räknas om; mätvärden som kommer för den tiden räknas som upprepade',
  ],
  'storage.hourDays': [
    '51cb',
    'hur länge lägsta, högsta och summa för varje timme sparas, minst så länge som mätvärden; av det som ligger längre tillbaka finns de för varje dygn kvar',
  ],
  'storage.dayDays': ['539f', 'hur länge de för varje dygn sparas'],
  'storage.lowSpaceMiB': [
    'cb95',
    'med mindre utrymme än så på datamappens disk, eller än en tjugondel av en liten disk, säger anläggningen till',
  ],
  'tls.certFile': [
    '0ef3',
    'datorns certifikat som PEM, följt av certifikaten på vägen till dess utfärdare; ett görs och hålls färskt om det utelämnas',
  ],
  'tls.keyFile': ['282e', 'dess privata nyckel som PEM, läsbar bara för programmet'],
  'log.level': ['035e', 'hur mycket som loggas, på standard error'],
};
