import type { SettingDescriptions } from '../setting-descriptions.ts';

/** What each setting does. The names of settings and their values stay as the file has them. */
export const settingDescriptions: SettingDescriptions = {
  data: ['ead4', 'kansio, jossa tietokanta on'],
  site: ['f1c0', 'tämän kohteen nimi MQTT-aiheissa'],
  timeZone: [
    'fb9b',
    'sen aikavyöhykkeen IANA-nimi, jonka mukaan päivät ja kellonajat ovat; tietokoneen oma, kun arvo puuttuu',
  ],
  language: [
    '825a',
    'ilmoitusten ja aamukoosteen kieli: en, sv, de, nb tai fi; jokainen sivu puhuu lukijansa kieltä',
  ],
  'access.look': [
    'a32c',
    'open: kaikki paikallisverkossa saavat katsoa; log-in: katsominen vaatii PIN-koodin tai paritetun tabletin heti, kun PIN-koodi on asetettu, ja siihen asti saa katsoa vain tietokone itse',
  ],
  'access.idleHours': [
    'ab81',
    'kirjautuminen päättyy, kun sitä ei ole käytetty näin pitkään aikaan',
  ],
  'access.longestDays': [
    '2250',
    'kirjautuminen päättyy tämän ajan kuluttua joka tapauksessa; paritetut tabletit jäävät, kunnes ne poistetaan',
  ],
  'http.host': ['e214', 'osoite, josta sivuja tarjotaan'],
  'http.port': ['32c1', '0 ottaa vapaan portin'],
  'http.maxStreams': [
    '9286',
    'näin monta sivua pidetään samaan aikaan ajan tasalla; yli menevä hylätään',
  ],
  'http.names': [
    'a063',
    'nimet oman lisäksi, joilla sivuja avataan, esimerkiksi shed.example; muilla nimillä tulevat pyynnöt hylätään. IP-osoitteet ja localhost toimivat aina',
  ],
  'http.tls': ['d245', 'tarjotaanko sivut TLS:n yli (https); katso osa tls'],
  'http.maxRequestsPerMinute': [
    'db53',
    'näin moneen yhden laitteen pyyntöön vastataan; tietokonetta itseään ei lasketa',
  ],
  'http.maxConnections': [
    '7a3c',
    'näin monta yhteyttä on auki samaan aikaan; yhdellä laitteella saa olla niistä neljännes',
  ],
  'http.requestSeconds': [
    '7ad6',
    'pisin aika, jossa pyynnön on tultava kokonaan; sen otsakkeiden puolessa siitä',
  ],
  'mqtt.host': ['bb26', 'sisäänrakennetun välittäjän osoite'],
  'mqtt.port': ['32c1', '0 ottaa vapaan portin'],
  'mqtt.tlsPort': [
    'f2a7',
    'sisäänrakennetun välittäjän portti TLS:lle, useimmiten 8883; ei mitään, kun arvo puuttuu. Katso osa tls',
  ],
  'mqtt.plain': [
    '677d',
    'kuunteleeko sisäänrakennettu välittäjä myös ilman TLS:ää; false vain, kun tlsPort on annettu',
  ],
  'mqtt.external': [
    '7767',
    'toinen välittäjä muodossa mqtt://host:port; sisäänrakennettu on silloin pois päältä',
  ],
  'mqtt.clientId': [
    'bdd2',
    'istunnon nimi toisella välittäjällä; tehdään kohteen nimestä, kun arvo puuttuu',
  ],
  'mqtt.maxSensors': ['555d', 'antureita tunnetaan enintään näin monta; muiden lukemat hylätään'],
  'mqtt.maxPayloadBytes': ['4d29', 'tätä suurempi viesti hylätään lukemana'],
  'mqtt.maxPacketBytes': [
    'df69',
    'sisäänrakennettu välittäjä ei lue tätä suurempaa pakettia, vaan yhteys katkaistaan',
  ],
  'mqtt.maxConnections': [
    '1b5f',
    'näin monta yhteyttä sisäänrakennetulla välittäjällä on auki samaan aikaan',
  ],
  'mqtt.connectSeconds': [
    '55a4',
    'pisin aika sisäänrakennettuun välittäjään yhdistämisestä siihen, kun CONNECT tulee',
  ],
  'mqtt.maxUnderWay': [
    'cd6a',
    'näin monta viestiä saa odottaa levyä samaan aikaan; sen yli sisäänrakennettu välittäjä ei lue yhdeltäkään lähettäjältä, ennen kuin osa on kirjoitettu',
  ],
  'mqtt.maxUnreadBytes': [
    'e004',
    'näin paljon saa sisäänrakennetussa välittäjässä odottaa asiakasta, joka ei lue; sen yli sen yhteys katkaistaan',
  ],
  'mqtt.maxRetained': [
    '04a9',
    'näin monen aiheen viimeisen viestin sisäänrakennettu välittäjä säilyttää asiakkaille',
  ],
  'discovery.maxTopics': [
    'a251',
    'näin monta aihetta, joita mikään sääntö ei tunne, muistetaan viimeisine viesteineen keskusmuistissa anturien käyttöönottoa varten; 0 ei muista yhtään',
  ],
  'discovery.maxBytes': [
    '92f7',
    'näin paljon viestistä muistetaan; jokaisesta aiheesta viisi viestiä',
  ],
  'discovery.maxRules': [
    'd12e',
    'näin monta aihesääntöä voi tehdä; jokaista aihetta verrataan niihin kaikkiin',
  ],
  'commit.spacingMs': [
    '95f4',
    'näin kauan lukema enintään odottaa muita tasaisessa virrassa, ennen kuin se kirjoitetaan ja kuitataan; ensimmäistä hiljaisen hetken jälkeen, ryöppyjä, uudelleen lähetettyä ja vastausta odottavia ei lykätä. Se säästää SD-korttia: kun lukemia tulee yksi sekunnissa, 5000 kirjoittaa noin 180 MB vuorokaudessa (jopa kaksinkertainen määrä on nähty, kun muutakin kirjoitetaan paljon), 2000 noin 330, 0 noin 600; kun lukemia tulee 20 sekunnissa, 5000 kirjoittaa noin 430–620 MB vuorokaudessa, 2000 noin 1000 ja 1000 noin 1400. Monet anturilaitteet luovuttavat 10 s kuluttua',
  ],
  'commit.groupSize': [
    '0b32',
    'kun näin monta lukemaa odottaa, kirjoittamista ei enää lykätä, oli väli mikä tahansa',
  ],
  'cure.ruling': ['6359', 'nopeus, jonka mukaan arviot tehdään; toinen lasketaan sen rinnalla'],
  'cure.datumC': ['5d4d', 'lämpötila, jonka alla astetuntien summa seisoo paikallaan'],
  'cure.activationEnergyJPerMol': ['71b7', 'Arrheniuksen nopeuden aktivoitumisenergia'],
  'cure.maxGapHours': ['db16', 'pisin lukemien väli, joka vielä lasketaan'],
  'cure.capC': [
    'caef',
    'tätä lämpimämpi ei lisää mitään siihen, mitä arviot laskevat: kuuma, rasvainen kerros nahkoittuu',
  ],
  'cure.boardSpread': [
    '2b7e',
    'saman kerroksen lautojen hajonta: niiden vaatiman määrän logaritmin keskihajonta; kun se on yli 0, arviot tehdään hitaimman kymmenesosan mukaan silloin, kun kosketuskokeet on tehty keskinkertaisesta laudasta',
  ],
  'cure.testAt': ['9942', 'todennäköisyys, josta alkaen koe kannattaa tehdä'],
  'cure.readyAt': ['52cf', 'todennäköisyys, josta alkaen sanotaan valmis'],
  'solvent.limitPpm': [
    '86ca',
    'tärpätin altistusraja paikallisten määräysten mukaan; matalin julkaistu, 20 ppm, kun arvo puuttuu',
  ],
  'place.floorShelfColderK': [
    '544e',
    'näin paljon kylmemmäksi huoneen tai telineen alin hylly oletetaan, kun siellä roikkuu vain yksi anturi eikä se ole sillä hyllyllä; se pidättää siveltimen kastepisteen lähellä eikä muuta mitään summaa. 0, kun asia on katsottu',
  ],
  'notices.quietHours.from': ['4dee', 'siitä lähtien ihmisiä säästetään'],
  'notices.quietHours.to': ['4a48', 'siihen asti; sama kuin from: ei koskaan'],
  'notices.digestAt': [
    'd73b',
    'milloin tulevasta päivästä tehdään kooste; ei koskaan, jos sivulla on valittu ”Ei mitään”: tiedostossa ei ole sille sanaa',
  ],
  'notices.ragRepeatHours': [
    '0e4c',
    'kuinka usein räteistä muistutetaan ensimmäisenä päivänä, kunnes ne on kuitattu; sen jälkeen kerran päivässä. Oletus',
  ],
  'notices.overheatC': [
    '3fba',
    'huoneen tai telineen ilma, joka on liian kuumaa; ohi, kun se on 5 K alempana. Oletus',
  ],
  'notices.giveUpHours': [
    'c594',
    'näin kauan perille pääsemätöntä viestiä yritetään uudelleen, yhä harvemmin',
  ],
  'notices.mqtt.on': ['7802', 'lähtevätkö ilmoitukset aiheeseen boardcure/<site>/notice'],
  'notices.mqtt.heedsQuietHours': ['1dca', 'koskevatko hiljaiset tunnit sitä'],
  'notices.webhook.url': [
    '1413',
    'http:// tai https:// -osoite, johon ilmoitukset lähetetään; ei mihinkään, kun arvo puuttuu',
  ],
  'notices.webhook.secret': [
    'c7e7',
    'avain, jolla jokainen lähetys allekirjoitetaan (RFC 9421, hmac-sha256), vähintään 16 merkkiä; mieluummin asetuksessa secretFile tai muuttujassa BOARDCURE_WEBHOOK_SECRET',
  ],
  'notices.webhook.secretFile': ['ecbb', 'tiedosto, jossa avain on; luetaan käynnistyksessä'],
  'notices.webhook.timeoutSeconds': ['36fa', 'näin kauan vastausta enintään odotetaan'],
  'notices.webhook.heedsQuietHours': ['1dca', 'koskevatko hiljaiset tunnit sitä'],
  'notices.mail.host': [
    '6cb4',
    'postin vastaanottavan SMTP-palvelimen nimi; ei postia, kun arvo puuttuu',
  ],
  'notices.mail.port': ['98df', 'SMTP-palvelimen portti'],
  'notices.mail.security': [
    '41ad',
    'starttls vaatii STARTTLS:n, tls puhuu TLS:ää alusta asti (portti 465), none lähettää selväkielisenä',
  ],
  'notices.mail.user': ['35dc', 'nimi, jolla kirjaudutaan, jos sitä vaaditaan'],
  'notices.mail.password': [
    'bab2',
    'salasana; mieluummin asetuksessa passwordFile tai muuttujassa BOARDCURE_MAIL_PASSWORD',
  ],
  'notices.mail.passwordFile': ['2a26', 'tiedosto, jossa salasana on; luetaan käynnistyksessä'],
  'notices.mail.from': ['20e6', 'osoite, josta posti tulee'],
  'notices.mail.to': ['171b', 'osoitteet, joihin posti menee'],
  'notices.mail.timeoutSeconds': ['79e8', 'näin kauan palvelinta enintään odotetaan'],
  'notices.mail.heedsQuietHours': ['1dca', 'koskevatko hiljaiset tunnit sitä'],
  'work.days': [
    'e372',
    'päivät, joina lautoja maalataan ja asennetaan; suunnitelma eteenpäin noudattaa niitä',
  ],
  'work.from': ['d356', 'työ alkaa'],
  'work.to': ['31f9', 'työ päättyy'],
  'work.brushM2PerHour': ['a2f8', 'mitä kaikki yhdessä maalaavat; yleinen käytäntö, ei lähdettä'],
  'work.mountBoardsPerHour': [
    '6db3',
    'laudat, jotka kaikki yhdessä asentavat; yleinen käytäntö, ei lähdettä',
  ],
  'work.goesUpAfter': [
    '437c',
    'milloin laudat siirtyvät telineestä seinään: myöhemmät kerrokset maalataan silloin siellä',
  ],
  'work.leastDayMeanC': [
    '9cae',
    'päivän keskilämpötila, josta alkaen sille suunnitellaan maalaamista: sen työtunnit ovat silloin todennäköisesti yli 5 °C; oletus',
  ],
  'work.monthlyMeanC': [
    '8de5',
    'jokaisen kuukauden keskilämpötila ulkona, tammikuu ensin, niin kuin sääpalvelu sen julkaisee: käytössä, kunnes kohteella on vuosi omia mittauksia',
  ],
  'photos.maxMiB': [
    'bdcc',
    'näin paljon kaikkien erien valokuvat saavat yhteensä viedä; ne ovat osa tietokantaa ja jokaista varmuuskopiota',
  ],
  'application.coldestC': ['c468', 'tätä kylmemmässä ei maalata; yleinen käytäntö, ei lähdettä'],
  'application.hottestC': [
    '0b5d',
    'tätä kuumemmassa ei maalata; yhdysvaltalainen puutuotejulkaisu',
  ],
  'application.verySlowBelowC': [
    '8063',
    'tämän alla kerros on hyvin hidas; yleinen käytäntö, ei lähdettä',
  ],
  'application.slowBelowC': ['c459', 'tämän alla kerros on hidas; yleinen käytäntö, ei lähdettä'],
  'application.warmAboveC': [
    'e166',
    'tämän yläpuolella kerros nahkoittuu; yleinen käytäntö, ei lähdettä',
  ],
  'application.dampestRhPercent': [
    '9106',
    'tätä kosteammassa ilmassa ei maalata; koskee sivellintä ja ensimmäistä yötä',
  ],
  'application.dewMarginK': ['7313', 'lautojen pienin etäisyys ilman kastepisteestä'],
  'application.dampestWoodPercent': ['35f8', 'kostein puu, joka maalataan, pinnasta mitattuna'],
  'application.boardsMeasured': [
    'e5b8',
    'näin monta lautaa mitataan, ja niistä huonoin ratkaisee; yleinen käytäntö, ei lähdettä',
  ],
  'application.moistureDays': ['af27', 'näin kauan käsimittarin luvut pätevät; oletus'],
  'application.stopBeforeDewHours': [
    '7e78',
    'sivellin lasketaan kädestä näin kauan ennen kastetta tai kylmää; yhdysvaltalainen puutuotejulkaisu',
  ],
  'application.dryBeforeRainHours': [
    'b6c6',
    'näin paljon aikaa ulkona olevalla kerroksella pitää olla ennen sadetta; yleinen käytäntö, ei lähdettä',
  ],
  'application.fromEndMm': ['fd9b', 'kuinka kaukaa päästä mitataan; yleinen käytäntö, ei lähdettä'],
  'trade.hemisphere': ['b692', 'kohteen pallonpuolisko auringon paikkaa varten'],
  'trade.stockSizes': [
    'b96f',
    'lautakoot, joita tarjotaan painikkeina, leveys x paksuus; yleinen käytäntö, ei lähdettä',
  ],
  'trade.stockLengthsMm': [
    '6964',
    'lautojen pituudet, joita tarjotaan painikkeina; yleinen käytäntö, ei lähdettä',
  ],
  'trade.weatheredAfterDays': [
    '8c0e',
    'tätä kauemmin ulkona ollut paljas puu luetaan harmaantuneeksi; noin kaksi viikkoa on yleistä',
  ],
  'trade.tinOldAfterDays': [
    'b2bc',
    'tätä kauemmin avoinna ollut purkki kovettuu hitaasti; yleinen käytäntö, ei lähdettä',
  ],
  'trade.lookAfterMinutes': [
    '5f38',
    'kuinka kauan kerroksen jälkeen katsotaan, mikä vielä kiiltää; yleinen käytäntö, ei lähdettä',
  ],
  'trade.lookUntilMinutes': ['a99e', 'mihin mennessä; yleinen käytäntö, ei lähdettä'],
  'backup.folder': [
    'dc80',
    'mihin yölliset varmuuskopiot menevät; tietokansion `backups`, kun arvo puuttuu, mieluummin kansio toisella levyllä',
  ],
  'backup.keep': [
    'b261',
    'näin monta yöllistä varmuuskopiota säilytetään, jokainen tietokannan kokoinen ja kokonaan kirjoitettu; 0 ei tee yhtään',
  ],
  'backup.at': [
    '98f5',
    'milloin; silloin sammuksissa ollut tietokone tekee sen jälkikäteen tällä tunnin minuutilla, kun se on päällä',
  ],
  'storage.readingDays': [
    '226a',
    'kuinka kauan yksittäisiä lukemia säilytetään; aina, kun arvo puuttuu. Vuosi, jossa 20 anturia lähettää 3 suuretta minuutissa, vie noin 125 MB. Kauempana olevasta jää jokaisen tunnin alin ja ylin, eikä sitä voi laskea uudelleen; lukemat, joita sille ajalle vielä tulee, lasketaan toistetuiksi',
  ],
  'storage.hourDays': [
    '51cb',
    'kuinka kauan jokaisen tunnin alin, ylin ja summa säilytetään, vähintään yhtä kauan kuin lukemat; kauempana olevasta jäävät jokaisen päivän vastaavat',
  ],
  'storage.dayDays': ['539f', 'kuinka kauan jokaisen päivän vastaavat säilytetään'],
  'storage.lowSpaceMiB': [
    'cb95',
    'kun tietokansion levyllä on tilaa vähemmän kuin tämä, tai pienellä levyllä alle kahdeskymmenesosa, siitä kerrotaan',
  ],
  'tls.certFile': [
    '0ef3',
    'tämän tietokoneen varmenne PEM-muodossa, perässään sen myöntäjään johtavat varmenteet; kun arvo puuttuu, varmenne tehdään ja pidetään tuoreena',
  ],
  'tls.keyFile': ['282e', 'sen yksityinen avain PEM-muodossa, vain taustaohjelman luettavissa'],
  'log.level': ['035e', 'kuinka paljon kirjataan lokiin, standard error -virtaan'],
};
