import { useReader } from '../reader.ts';

/** The cautions of the trade, on one page that can be reached from everywhere. */
export function CautionsPage() {
  const { cautionsPage } = useReader().words;
  return (
    <main class="page page-prose">
      <h1>{cautionsPage.title}</h1>
      <p class="lead">{cautionsPage.lead}</p>
      {cautionsPage.all.map((caution) => (
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
