import { cautions } from '../words/caution-words.ts';

/** The cautions of the trade, on one page that can be reached from everywhere. */
export function CautionsPage() {
  return (
    <main class="page prose">
      <h1>Cautions</h1>
      <p class="lead">
        The usual ones of the trade. They do not replace the paint maker’s sheet, local codes or
        licensed practice, which come first.
      </p>
      {cautions.map((caution) => (
        <section key={caution.title} class="caution">
          <h2>{caution.title}</h2>
          {caution.lines.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </section>
      ))}
    </main>
  );
}
