import type { Phrases } from '../phrase.ts';
import type { ProblemSentences } from '../subject/problem.ts';

export const problem: Phrases<ProblemSentences> = {
  'problem-title/BC_REQUEST_INVALID': () => 'Forespørselen har et felt som ikke passer',
  'problem-to-do/BC_REQUEST_INVALID': () =>
    'Rett feltene som er nevnt under errors, og send det på nytt.',
  'problem-title/BC_REQUEST_UNREADABLE': () => 'Forespørselen kunne ikke leses',
  'problem-to-do/BC_REQUEST_UNREADABLE': () =>
    'Send JSON med hodefeltet content-type: application/json.',
  'problem-title/BC_REQUEST_TOO_LARGE': () => 'Forespørselen er for stor',
  'problem-to-do/BC_REQUEST_TOO_LARGE': () => 'Send høyst 1 MB om gangen.',
  'problem-title/BC_ROUTE_UNKNOWN': () => 'Det er ingenting på denne adressen',
  'problem-to-do/BC_ROUTE_UNKNOWN': () => 'Se /api/v1/openapi.json for adressene som finnes.',
  'problem-title/BC_THING_UNKNOWN': () => 'Noe slikt finnes ikke her',
  'problem-to-do/BC_THING_UNKNOWN': () =>
    'Sjekk id-en; det som finnes, listes med en GET på samlingen.',
  'problem-title/BC_REFERENCE_UNKNOWN': () => 'Et felt peker på noe som ikke finnes',
  'problem-to-do/BC_REFERENCE_UNKNOWN': () =>
    'Opprett det først, eller bruk id-en til noe som finnes.',
  'problem-title/BC_STATE_CONFLICT': () => 'Dette passer ikke med det som allerede er notert',
  'problem-to-do/BC_STATE_CONFLICT': () =>
    'Se på det som er notert, og send så en rettet forespørsel.',
  'problem-title/BC_MERGE_UNLIKE': () => 'Disse bordene kan ikke slås sammen',
  'problem-to-do/BC_MERGE_UNLIKE': () =>
    'Behold dem som to partier, eller slå bare sammen bord med samme trevirke, plan og strøk.',
  'problem-title/BC_SPLIT_TOO_MANY': () => 'Så mange bord er det ikke å dele av',
  'problem-to-do/BC_SPLIT_TOO_MANY': () =>
    'Oppgi færre bord; gikk alle, noter en flytting i stedet.',
  'problem-title/BC_ID_TAKEN': () => 'Denne id-en er allerede brukt til noe annet',
  'problem-to-do/BC_ID_TAKEN': () => 'Send det med en ny id.',
  'problem-title/BC_WRITE_NOT_ALLOWED': () => 'Endringer tas bare imot fra selve datamaskinen',
  'problem-to-do/BC_WRITE_NOT_ALLOWED': () =>
    'Åpne siden på datamaskinen som kjører programmet, på http://localhost, eller velg en PIN-kode der, eller her med startkoden som programmet skrev ut da det startet.',
  'problem-title/BC_LOGIN_NEEDED': () => 'Dette krever innlogging',
  'problem-to-do/BC_LOGIN_NEEDED': () => 'Logg inn med PIN-koden, og send det så på nytt.',
  'problem-title/BC_ROLE_TOO_SMALL': () => 'Denne enheten har ikke lov til dette',
  'problem-to-do/BC_ROLE_TOO_SMALL': () => 'Logg inn med en PIN-kode som har lov.',
  'problem-title/BC_PIN_WRONG': () => 'PIN-koden eller koden stemmer ikke',
  'problem-to-do/BC_PIN_WRONG': () =>
    'Prøv igjen; den som har glemt PIN-koden, velger en ny på selve datamaskinen med: boardcure pin.',
  'problem-title/BC_TRIES_EXHAUSTED': () =>
    'For mange feil PIN-koder eller koder kom fra denne enheten',
  'problem-to-do/BC_TRIES_EXHAUSTED': () =>
    'Vent så lenge som det sies, eller bruk en enhet som er innlogget, eller velg en ny PIN-kode på selve datamaskinen med: boardcure pin.',
  'problem-title/BC_REQUEST_FOREIGN': () => 'Forespørselen kom fra en side på et annet nettsted',
  'problem-to-do/BC_REQUEST_FOREIGN': () =>
    'Bruk programmets egen side; et program sender hodefeltet x-boardcure-request med en hvilken som helst verdi.',
  'problem-title/BC_HOST_UNKNOWN': () => 'Programmet er ikke kjent under dette navnet',
  'problem-to-do/BC_HOST_UNKNOWN': () =>
    'Bruk IP-adressen eller datamaskinens navn, eller før opp navnet i innstillingene under http.names.',
  'problem-title/BC_SENSORS_WOULD_FALL_SILENT': () =>
    'Å stenge MQTT-tjeneren ville gjøre noe som er i bruk, taust',
  'problem-to-do/BC_SENSORS_WOULD_FALL_SILENT': () =>
    'Lag et navn og et passord for hver av dem og legg dem inn, eller send dem som kan bli tause, under silence.',
  'problem-title/BC_TOO_MANY_REQUESTS': () => 'For mange forespørsler kommer fra denne enheten',
  'problem-to-do/BC_TOO_MANY_REQUESTS': () =>
    'Vent et minutt, eller øk http.maxRequestsPerMinute i innstillingene.',
  'problem-title/BC_TOO_MANY_STREAMS': () => 'For mange sider lytter allerede',
  'problem-to-do/BC_TOO_MANY_STREAMS': () =>
    'Vent til en annen side lukkes, eller øk http.maxStreams i innstillingene.',
  'problem-title/BC_SETTING_FIXED': () => 'Denne innstillingen endres ikke på siden',
  'problem-to-do/BC_SETTING_FIXED': () =>
    'Sett den i innstillingsfilen på selve datamaskinen, eller ta bort flagget eller variabelen som gir den, og start programmet på nytt.',
  'problem-title/BC_STORE_FULL': () => 'Disken er full',
  'problem-to-do/BC_STORE_FULL': () =>
    'Frigjør plass på disken; registreringen fortsetter av seg selv.',
  'problem-title/BC_INTERNAL': () => 'Noe gikk galt inne i programmet',
  'problem-to-do/BC_INTERNAL': () => 'Prøv igjen; skjer det på nytt, se i programmets logg.',
};
