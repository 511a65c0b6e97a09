import type { Phrases } from '../phrase.ts';
import type { SiteSentences } from '../subject/site.ts';

const wasSet =
  (way: string) =>
  ({ minutes }: { minutes: number }): string =>
    `Tietokoneen kelloa siirrettiin ${way} ${minutes} min, eikä mikään aikapalvelu vahvista sitä. Aika jatkuu entisellään, jotta mikään summa ei vääristy; jos uusi aika on oikea, käynnistä Boardcure uudelleen.`;

export const site: Phrases<SiteSentences> = {
  'disk-full': () =>
    'Levy on täynnä: lukemia ei kuitata, jotta anturit säilyttävät ne. Vapauta tilaa; tallennus jatkuu itsestään.',
  'disk-low': ({ freeMiB }) =>
    `Tietokansion levyllä on jäljellä vain ${freeMiB} MiB: tee tilaa, tai lukemat joutuvat odottamaan antureissaan.`,
  'broker-away': () => 'MQTT-välittäjään ei saada yhteyttä; lukemat odottavat siellä.',
  'clock-not-set': () =>
    'Tietokoneen kelloa ei ole asetettu. Lukemat, joilla ei ole omaa aikaa, säilytetään, ja ne saavat paikkansa, kun kello on asetettu: anna tietokoneelle verkko, jossa on aikapalvelu, tai aseta sen kello.',
  'clock-was-set/forward': wasSet('eteenpäin'),
  'clock-was-set/back': wasSet('taaksepäin'),
  'sensor-clock/ahead': ({ sensor, minutes }) =>
    `Anturin ${sensor} kello edistää ${minutes} min: sen lukemat päivätään saapumisen mukaan. Aseta sen kello.`,
  'sensor-clock/behind': ({ sensor, minutes }) =>
    `Anturin ${sensor} kello jätättää ${minutes} min, tai sen lukemat ovat niin kauan matkalla: ne pitävät antamansa ajan. Aseta sen kello, tai anna sen lähettää ilman aikaa.`,
  'folder-gone': ({ name }) =>
    `Datakansioon ${name} ei päästä: nyt vastaanotettava menee tiedostoon, jota kukaan ei enää löydä. Katso, että levy on liitetty, palauta kansio ja käynnistä Boardcure uudelleen.`,
  'database-damaged': ({ found }) =>
    `Tietokanta on vaurioitunut (${found}). Lukemia otetaan yhä vastaan. Pysäytä Boardcure ja pane varmuuskopio sen tilalle: boardcure restore <tiedosto> --replace.`,
  'backup-not-made': ({ because }) => `Viimeisintä yöllistä varmuuskopiota ei tehty. ${because}`,
};
