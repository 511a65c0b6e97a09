import type { Phrases } from '../phrase.ts';
import type { ProblemSentences } from '../subject/problem.ts';

export const problem: Phrases<ProblemSentences> = {
  'problem-title/BC_REQUEST_INVALID': () => 'In der Anfrage passt ein Feld nicht',
  'problem-to-do/BC_REQUEST_INVALID': () =>
    'Die Felder, die unter errors stehen, berichtigen und noch einmal senden.',
  'problem-title/BC_REQUEST_UNREADABLE': () => 'Die Anfrage ließ sich nicht lesen',
  'problem-to-do/BC_REQUEST_UNREADABLE': () =>
    'JSON mit der Kopfzeile content-type: application/json senden.',
  'problem-title/BC_REQUEST_TOO_LARGE': () => 'Die Anfrage ist zu groß',
  'problem-to-do/BC_REQUEST_TOO_LARGE': () => 'Höchstens 1 MB auf einmal senden.',
  'problem-title/BC_ROUTE_UNKNOWN': () => 'Unter dieser Adresse gibt es nichts',
  'problem-to-do/BC_ROUTE_UNKNOWN': () => 'Welche Adressen es gibt, steht in /api/v1/openapi.json.',
  'problem-title/BC_THING_UNKNOWN': () => 'So etwas gibt es hier nicht',
  'problem-to-do/BC_THING_UNKNOWN': () =>
    'Die Kennung prüfen; ein GET auf die Sammlung zählt auf, was es gibt.',
  'problem-title/BC_REFERENCE_UNKNOWN': () => 'Ein Feld verweist auf etwas, das es nicht gibt',
  'problem-to-do/BC_REFERENCE_UNKNOWN': () =>
    'Zuerst anlegen oder die Kennung von etwas Vorhandenem nehmen.',
  'problem-title/BC_STATE_CONFLICT': () => 'Das passt nicht zu dem, was schon eingetragen ist',
  'problem-to-do/BC_STATE_CONFLICT': () =>
    'Ansehen, was eingetragen ist, dann eine berichtigte Anfrage senden.',
  'problem-title/BC_MERGE_UNLIKE': () => 'Diese Bretter lassen sich nicht vereinen',
  'problem-to-do/BC_MERGE_UNLIKE': () =>
    'Als zwei Partien behalten, oder nur Bretter von gleichem Holz, Plan und gleichen Anstrichen vereinen.',
  'problem-title/BC_SPLIT_TOO_MANY': () => 'So viele Bretter lassen sich nicht abteilen',
  'problem-to-do/BC_SPLIT_TOO_MANY': () =>
    'Weniger Bretter angeben; wenn alle gingen, stattdessen ein Umlegen eintragen.',
  'problem-title/BC_ID_TAKEN': () => 'Diese Kennung ist schon für etwas anderes vergeben',
  'problem-to-do/BC_ID_TAKEN': () => 'Mit einer neuen Kennung senden.',
  'problem-title/BC_WRITE_NOT_ALLOWED': () => 'Änderungen werden nur vom Rechner selbst angenommen',
  'problem-to-do/BC_WRITE_NOT_ALLOWED': () =>
    'Die Seite auf dem Rechner öffnen, auf dem der Dienst läuft, unter http://localhost, oder dort eine PIN wählen, oder hier mit dem Einrichtungscode, den der Dienst beim Start ausgegeben hat.',
  'problem-title/BC_LOGIN_NEEDED': () => 'Dafür ist eine Anmeldung nötig',
  'problem-to-do/BC_LOGIN_NEEDED': () => 'Mit der PIN anmelden, dann noch einmal senden.',
  'problem-title/BC_ROLE_TOO_SMALL': () => 'Dieses Gerät darf das nicht',
  'problem-to-do/BC_ROLE_TOO_SMALL': () => 'Mit einer PIN anmelden, die das darf.',
  'problem-title/BC_PIN_WRONG': () => 'Die PIN oder der Code stimmt nicht',
  'problem-to-do/BC_PIN_WRONG': () =>
    'Noch einmal versuchen; wer die PIN vergessen hat, setzt am Rechner selbst eine neue mit: boardcure pin.',
  'problem-title/BC_TRIES_EXHAUSTED': () =>
    'Von diesem Gerät kamen zu viele falsche PINs oder Codes',
  'problem-to-do/BC_TRIES_EXHAUSTED': () =>
    'Die genannte Zeit abwarten, oder ein angemeldetes Gerät nehmen, oder am Rechner selbst eine neue PIN setzen mit: boardcure pin.',
  'problem-title/BC_REQUEST_FOREIGN': () => 'Die Anfrage kam von einer fremden Seite',
  'problem-to-do/BC_REQUEST_FOREIGN': () =>
    'Die Seite dieses Dienstes nehmen; ein Programm sendet die Kopfzeile x-boardcure-request mit einem beliebigen Wert.',
  'problem-title/BC_HOST_UNKNOWN': () => 'Unter diesem Namen ist der Dienst nicht bekannt',
  'problem-to-do/BC_HOST_UNKNOWN': () =>
    'Seine IP-Adresse oder den Namen seines Rechners nehmen, oder den Namen in den Einstellungen unter http.names aufführen.',
  'problem-title/BC_SENSORS_WOULD_FALL_SILENT': () =>
    'Den Broker zu schließen würde etwas Benutztes verstummen lassen',
  'problem-to-do/BC_SENSORS_WOULD_FALL_SILENT': () =>
    'Für jedes einen Namen und ein Passwort anlegen und eintragen, oder unter silence senden, was verstummen darf.',
  'problem-title/BC_TOO_MANY_REQUESTS': () => 'Von diesem Gerät kommen zu viele Anfragen',
  'problem-to-do/BC_TOO_MANY_REQUESTS': () =>
    'Eine Minute warten oder http.maxRequestsPerMinute in den Einstellungen erhöhen.',
  'problem-title/BC_TOO_MANY_STREAMS': () => 'Es hören schon zu viele Seiten zu',
  'problem-to-do/BC_TOO_MANY_STREAMS': () =>
    'Warten, bis eine andere Seite geschlossen wird, oder http.maxStreams in den Einstellungen erhöhen.',
  'problem-title/BC_SETTING_FIXED': () => 'Diese Einstellung wird nicht auf der Seite geändert',
  'problem-to-do/BC_SETTING_FIXED': () =>
    'In der Einstellungsdatei auf dem Rechner selbst setzen, oder den Schalter oder die Variable wegnehmen, die sie angibt, und den Dienst neu starten.',
  'problem-title/BC_STORE_FULL': () => 'Der Speicher ist voll',
  'problem-to-do/BC_STORE_FULL': () =>
    'Auf dem Datenträger Platz schaffen; das Aufzeichnen geht von selbst weiter.',
  'problem-title/BC_INTERNAL': () => 'Im Dienst ist etwas schiefgegangen',
  'problem-to-do/BC_INTERNAL': () =>
    'Noch einmal versuchen; wenn es wieder geschieht, ins Protokoll des Dienstes sehen.',
};
