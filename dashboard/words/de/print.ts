import type { print as English } from '../en/print.ts';

export const print: typeof English = {
  print: 'Drucken',
  phone: {
    address: 'Adresse, unter der Telefone diesen Rechner erreichen',
    notFollowed: (example) =>
      `Ein Telefon kann dieser Adresse nicht folgen: den Namen oder die Nummer dieses Rechners im Netz eintippen, zum Beispiel ${example}.`,
    code: 'QR-Code, der zur Seite dieser Bretter führt',
  },
  mixture: 'Mischung',
  card: 'Karte',
  cardNotDrawn: 'Die Karte lässt sich nicht zeichnen',
  door: {
    title: 'Karte für die Tür',
    how: {
      metric: 'A4 hochkant. In Augenhöhe innen an die Tür hängen, die zuletzt abgeschlossen wird.',
      us: 'Letter, hochkant. In Augenhöhe innen an die Tür hängen, die zuletzt abgeschlossen wird.',
    },
    name: 'Vor dem Abschließen',
    when: 'An jedem Tag, an dem gestrichen, geölt oder geschliffen wird. Abhaken beweist nichts: hinsehen, anfassen.',
    line: (title, text) => [title, ' ', text],
    fire: 'Rauch oder Brandgeruch: alle hinaus, Tür zu, Feuerwehr rufen: ____________. Unsere Adresse: ____________________________',
    foot: 'Übliche Praxis; örtliche Vorschriften und das Merkblatt des Farbherstellers gehen vor.',
  },
  label: {
    title: 'Etikett für den Topf',
    notDrawn: 'Das Etikett lässt sich nicht zeichnen',
    how: (size) =>
      `${size}. Ausschneiden und mit klarem Klebeband aufkleben, bevor der Topf außen nass ist.`,
    label: 'Etikett',
    forBoards: 'für ________________',
    share: (part, percent) => `${part} ${percent}`,
    colour: 'Farbton ________________',
    mixed: (date) => `Gemischt ${date}`,
    mind: 'Vom Boden her aufrühren. Geschlossen halten, fern von Flammen, vor Kindern weggeschlossen. Die Lappen davon fangen von selbst Feuer: unter Wasser und Deckel. Sondermüll.',
  },
  rack: {
    title: 'Karte fürs Gestell',
    how: {
      metric:
        'A5 quer. So aufhängen, dass kein nasses Brett sie berührt; der Code öffnet auf einem Telefon die Seite dieser Bretter.',
      us: 'Halbes Letter-Blatt, quer. So aufhängen, dass kein nasses Brett sie berührt; der Code öffnet auf einem Telefon die Seite dieser Bretter.',
    },
    boards: (count, species, surface, size) => `${count} × ${species}, ${surface}, ${size}`,
    coat: 'Anstrich',
    mixture: 'Mischung',
    lastBoardDone: 'Letztes Brett fertig',
    feltDry: 'Trocken angefasst',
    foot: 'Nass: nur zum Prüfen anfassen. Ölige Lappen fangen von selbst Feuer.',
  },
  strip: {
    title: 'Streifen für den Rührstab',
    notDrawn: 'Der Streifen lässt sich nicht zeichnen',
    noWidth: (back) => ['Niemand hat gesagt, wie weit der Topf ist. ', back],
    back: 'Zurück zum Topf',
    how: (line) =>
      `Mit 100 % drucken, nicht an die Seite angepasst, und vor dem Schneiden ein Lineal an diese Linie halten: ${line}. Der Fuß des Streifens steht auf dem Boden des Topfs.`,
    tooLong: {
      metric: (length) =>
        `Der Streifen ist ${length} lang und passt nicht auf ein A4-Blatt: einen weiteren Topf nehmen oder weniger auf einmal mischen.`,
      us: (length) =>
        `Der Streifen ist ${length} lang und passt nicht auf ein Letter-Blatt: einen weiteren Topf nehmen oder weniger auf einmal mischen.`,
    },
    mark: (part, figure) => `${part} ${figure}`,
    spoken: (marks, unit) => `Streifen mit Marken bei ${marks} ${unit}`,
    checkSpoken: (length) => `Eine Linie von ${length} zum Nachmessen`,
    check: (length) => `diese Linie ist ${length} lang`,
  },
};
