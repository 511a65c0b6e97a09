import type { Phrases } from '../phrase.ts';
import type { ProblemSentences } from '../subject/problem.ts';

export const problem: Phrases<ProblemSentences> = {
  'problem-title/BC_REQUEST_INVALID': () => 'Det finns ett fält som inte stämmer',
  'problem-to-do/BC_REQUEST_INVALID': () => 'Rätta fälten som nämns och skicka det igen.',
  'problem-title/BC_REQUEST_UNREADABLE': () => 'Begäran gick inte att läsa',
  'problem-to-do/BC_REQUEST_UNREADABLE': () =>
    'Skicka JSON med huvudet content-type: application/json.',
  'problem-title/BC_REQUEST_TOO_LARGE': () => 'Begäran är för stor',
  'problem-to-do/BC_REQUEST_TOO_LARGE': () => 'Skicka högst 1 MB åt gången.',
  'problem-title/BC_ROUTE_UNKNOWN': () => 'Det finns ingenting på den här adressen',
  'problem-to-do/BC_ROUTE_UNKNOWN': () => 'Se /api/v1/openapi.json för de adresser som finns.',
  'problem-title/BC_THING_UNKNOWN': () => 'Något sådant finns inte här',
  'problem-to-do/BC_THING_UNKNOWN': () =>
    'Kontrollera id:t; vad som finns visas med en GET på samlingen.',
  'problem-title/BC_REFERENCE_UNKNOWN': () => 'Ett fält pekar på något som inte finns',
  'problem-to-do/BC_REFERENCE_UNKNOWN': () =>
    'Lägg upp det först, eller använd id:t för något som finns.',
  'problem-title/BC_STATE_CONFLICT': () => 'Det går inte ihop med det som redan är antecknat',
  'problem-to-do/BC_STATE_CONFLICT': () => 'Se vad som är antecknat, och skicka en rättad begäran.',
  'problem-title/BC_MERGE_UNLIKE': () => 'De här brädorna kan inte slås ihop',
  'problem-to-do/BC_MERGE_UNLIKE': () =>
    'Behåll dem som två partier, eller slå bara ihop brädor av samma virke, plan och strykningar.',
  'problem-title/BC_SPLIT_TOO_MANY': () => 'Så många brädor finns inte att dela av',
  'problem-to-do/BC_SPLIT_TOO_MANY': () =>
    'Ange färre brädor; gick alla, anteckna i stället en flytt.',
  'problem-title/BC_ID_TAKEN': () => 'Det här id:t används redan till något annat',
  'problem-to-do/BC_ID_TAKEN': () => 'Skicka det med ett nytt id.',
  'problem-title/BC_WRITE_NOT_ALLOWED': () => 'Ändringar tas bara emot från själva datorn',
  'problem-to-do/BC_WRITE_NOT_ALLOWED': () =>
    'Öppna sidan på datorn som kör programmet, på http://localhost, eller välj en PIN-kod där, eller här med startkoden som programmet skrev ut när det startade.',
  'problem-title/BC_LOGIN_NEEDED': () => 'Här krävs inloggning',
  'problem-to-do/BC_LOGIN_NEEDED': () => 'Logga in med PIN-koden och skicka det igen.',
  'problem-title/BC_ROLE_TOO_SMALL': () => 'Den här enheten får inte göra det här',
  'problem-to-do/BC_ROLE_TOO_SMALL': () => 'Logga in med en PIN-kod som får.',
  'problem-title/BC_PIN_WRONG': () => 'PIN-koden eller koden stämmer inte',
  'problem-to-do/BC_PIN_WRONG': () =>
    'Försök igen; den som har glömt PIN-koden väljer en ny på själva datorn med: boardcure pin.',
  'problem-title/BC_TRIES_EXHAUSTED': () =>
    'För många felaktiga PIN-koder eller koder kom från den här enheten',
  'problem-to-do/BC_TRIES_EXHAUSTED': () =>
    'Vänta så länge som sägs, eller använd en enhet som är inloggad, eller välj en ny PIN-kod på själva datorn med: boardcure pin.',
  'problem-title/BC_REQUEST_FOREIGN': () => 'Begäran kom från en sida på en annan webbplats',
  'problem-to-do/BC_REQUEST_FOREIGN': () =>
    'Använd programmets egen sida; ett program skickar huvudet x-boardcure-request med valfritt värde.',
  'problem-title/BC_HOST_UNKNOWN': () => 'Programmet är inte känt under det här namnet',
  'problem-to-do/BC_HOST_UNKNOWN': () =>
    'Använd dess IP-adress eller datorns namn, eller ange namnet i inställningarna under http.names.',
  'problem-title/BC_SENSORS_WOULD_FALL_SILENT': () =>
    'Att stänga MQTT-servern skulle tysta något som används',
  'problem-to-do/BC_SENSORS_WOULD_FALL_SILENT': () =>
    'Gör ett namn och ett lösenord för var och en och lägg in dem, eller skicka dem som får tystna under silence.',
  'problem-title/BC_TOO_MANY_REQUESTS': () => 'För många förfrågningar kommer från den här enheten',
  'problem-to-do/BC_TOO_MANY_REQUESTS': () =>
    'Vänta en minut, eller höj http.maxRequestsPerMinute i inställningarna.',
  'problem-title/BC_TOO_MANY_STREAMS': () => 'För många sidor lyssnar redan',
  'problem-to-do/BC_TOO_MANY_STREAMS': () =>
    'Vänta tills en annan sida stängs, eller höj http.maxStreams i inställningarna.',
  'problem-title/BC_SETTING_FIXED': () => 'Den här inställningen ändras inte på sidan',
  'problem-to-do/BC_SETTING_FIXED': () =>
    'Ange den i inställningsfilen på själva datorn, eller ta bort flaggan eller variabeln som anger den, och starta programmet igen.',
  'problem-title/BC_STORE_FULL': () => 'Disken är full',
  'problem-to-do/BC_STORE_FULL': () =>
    'Frigör utrymme på disken; antecknandet fortsätter av sig självt.',
  'problem-title/BC_INTERNAL': () => 'Något gick fel inuti programmet',
  'problem-to-do/BC_INTERNAL': () => 'Försök igen; händer det igen, se i programmets logg.',
};
