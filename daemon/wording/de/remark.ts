import type { Phrases } from '../phrase.ts';
import type { RemarkSentences } from '../subject/remark.ts';

export const remark: Phrases<RemarkSentences> = {
  'cure-wrinkled/wait': () =>
    'Er kam zu dick drauf: Die Haut schloss sich über einem weichen Film. Warten, bis er durch und durch fest ist, Tage bis Wochen.',
  'cure-wrinkled/scrape': () =>
    'Die Runzeln abkratzen, nicht heiß schleifen. Alte Farbe kann Blei enthalten: zuerst prüfen.',
  'cure-wrinkled/thinner': () => 'Noch einmal streichen, dünner, und länger ausstreichen.',
  'cure-runs/while-soft': () => 'Solange sie weich sind: nach oben ausstreichen.',
  'cure-runs/once-set': () =>
    'Wenn sie angezogen haben: warten, bis sie fest sind, mit einem scharfen Schaber abschneiden und die Stelle dünn streichen.',
  'cure-dull/feed': () =>
    'Matt heißt ausgehungert: Das Holz hat das Öl getrunken. Mit einem weiteren dünnen Anstrich nähren.',
  'cure-dull/spots-first': () =>
    'Nur matte Flecken: zuerst diese streichen, die ganze Fläche, wenn sie trocken sind.',
  'cure-glossy/wait': () =>
    'Glänzend heißt fett: Zu viel Öl liegt obenauf und bleibt lange weich. Warten, bis ein Daumennagel keine Spur hinterlässt.',
  'cure-glossy/rub-matt': () =>
    'Vor dem nächsten Anstrich matt reiben, damit er hält, und dünner streichen.',
  'cure-got-wet/dry': () => 'In bewegter Luft trocknen lassen, nicht in der Sonne.',
  'cure-got-wet/look': () =>
    'Dann vor dem Weitermachen nach matten Flecken und Ausbleichung sehen; was matt ist, nähren.',
  'cure-dew-night/dry': () => 'Von selbst abtrocknen lassen; nasse Farbe nicht reiben.',
  'cure-dew-night/look': () =>
    'Dann vor dem Weitermachen nach matten Flecken und Ausbleichung sehen; was matt ist, nähren.',
  'cure-bleached/cure-through': () =>
    'Wasser stand darauf, als er weich war. Durchhärten lassen, matt reiben und noch einmal streichen.',
  'cure-still-standing/brush-out': () =>
    'Binnen einer Stunde über die trockenen Stellen ausstreichen oder mit einem Lappen in Faserrichtung abwischen.',
  'cure-still-standing/rags': () =>
    'Die Lappen flach im Freien auslegen oder in einem Blecheimer mit Deckel unter Wasser legen: Sie erhitzen sich von selbst.',
  'cure-wiped-off/rags': () =>
    'Ölige Lappen erhitzen sich von selbst: flach ins Freie oder unter Wasser in einen Eimer mit Deckel.',
  'cure-sunk-in/fine': () => 'Wie es sein soll. Ihm seine Zeit lassen.',
  'cure-clogged/stop': () =>
    'Er ist nicht durchgetrocknet: aufhören, sonst reißt das Papier den Film ab. Tage geben, dann wieder an einer Kante versuchen.',
  'cure-clogged/dust': () =>
    'Den Staub nass binden oder absaugen und eine Maske tragen. Alte Farbe kann Blei enthalten: zuerst prüfen.',
  'cure-sanded/tell': () =>
    'Morgen sagen, ob es staubte oder sich zusetzte: Das lehrt, was diese Farbe braucht.',
  'cure-sanded/dust': () =>
    'Schleifstaub, der mit Öl getränkt ist, kann Feuer fangen: ins Freie damit, angefeuchtet, in einen Blecheimer mit Deckel.',
  'dew-night': ({ placeName, tempC, rhPercent }, speak) =>
    `Nach der Luft dort (${placeName}) kann Wasser darauf gestanden haben: ${speak.temperature(tempC)} und ${speak.humidity(rhPercent)} Luftfeuchte.`,
};
