import type { batch as English } from '../en/batch.ts';
import { plural } from '../plural.ts';

const boards = (count: number) => plural('sv', count, { one: '# bräda', other: '# brädor' });

export const batch: typeof English = {
  cannotShow: 'Partiet kan inte visas',
  verdict: 'Besked',
  stepByStep: 'Stryk steg för steg',
  printCard: 'Skriv ut kortet till stället',
  report: 'Rapporten om partiet, att skriva ut eller spara',
  facts: {
    at: (place) => `på ${place}`,
    boards: (count, species) => `${boards(count)} av ${species}`,
    closed: 'avslutat',
    recomputing: 'sena mätvärden räknas in',
  },
  hero: {
    notSure: 'Vet inte längre',
    spoken: (sign, job) => `${sign} ${job}`,
    coat: (number, all, coat, stage) => `Strykning ${number} av ${all}, ${coat}: ${stage}.`,
    faces: (faces) => `På ${faces}.`,
    lastBoard: (moment) => ['Sista brädan: ', moment, '.'],
    sum: (degreeHours, hours, at) => `${degreeHours}, lika mycket som ${hours} vid ${at}.`,
    gathered: (degreeHours, needed) =>
      `${degreeHours} samlade; för att stryka igen behövs troligen ${needed}.`,
  },
  jobs: {
    title: 'Vad brädorna får',
    odds: (odds) => `Chans: ${odds}`,
    how: 'Så känner du efter',
    exact: 'Exakta tider',
    oddsColumn: 'Chans',
    by: 'Senast',
    needs: 'Behöver',
    oneInTen: '1 av 10',
    oneInTwo: '1 av 2',
    nineInTen: '9 av 10',
    unknown: 'okänt eller förbi',
    footnote:
      'Chansen gäller den långsammaste tiondelen av brädorna. Tills känselprov har lärt bättre är det ett startantagande vad ett arbete behöver.',
  },
  helps: 'Vad som skulle hjälpa',
  air: {
    title: (place) => `Luften på ${place}`,
    now: (temperature, humidity, dewPoint, word) => [
      `${temperature}, ${humidity}, daggpunkt ${dewPoint}. Luft: `,
      word,
      '.',
    ],
    apart: (difference) => `Givarna här skiljer ${difference}; den kallaste räknas.`,
    apartInHumidity: (difference) =>
      `Givarna här skiljer ${difference} i fuktighet; den fuktigaste räknas för dagg.`,
  },
  coats: {
    title: 'Strykningar',
    name: (number, all, coat) => `${number} av ${all}: ${coat}`,
    used: (volume) => `${volume} gick åt`,
    tin: (tin) => `burk ${tin}`,
    lastBoard: 'Sista brädan',
    stage: 'Stadium',
    sum: 'Summa',
    lowToHigh: 'Låg till hög',
    range: (low, high) => `${low} till ${high}`,
    hoursAt: (temperature) => `Vid ${temperature}`,
    arrhenius: 'Enligt Arrhenius',
    measured: 'Uppmätt',
    gaps: 'Utan mätvärden',
    needs: 'Stryka igen behöver troligen',
    model: 'Modell',
    models: {
      'nurse-saul': (datum, gap) =>
        `temperatursumma, bastemperatur ${datum}, luckor över ${gap} räknas inte`,
      arrhenius: (gap) => `Arrhenius, luckor över ${gap} räknas inte`,
    },
    byMistake: 'Antecknad av misstag',
    byMistakeHow: 'Antecknad av misstag? Den finns kvar, märkt som återtagen.',
    leave: 'Låt den vara',
  },
  log: {
    title: 'Vad som antecknats',
    nothing: 'Ingenting än. Ett känselprov lär mer än någon tabell.',
    moved: (place) => `Flyttade till ${place}`,
    remark: (remark, text) => `${remark}: ${text}`,
    meter: (quantity, figures) => `${quantity}: ${figures}`,
    passed: (job, sum, on, felt) => `Klart ${job} vid ${sum}, kände på ${on}: ${felt}`,
    failed: (job, sum, on, felt) => `Inte klart ${job} än vid ${sum}, kände på ${on}: ${felt}`,
    on: { board: 'en bräda', offcut: 'provbiten' },
  },
};
