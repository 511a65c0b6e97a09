import { Fragment } from 'preact';
import { type Told, useReader } from './reader.ts';

/** A sentence of the daemon in the reader’s words; marked as English where it is known in no other. */
export function Said({ sentence }: { sentence: Told }) {
  const said = useReader().say(sentence);
  return said === sentence.text ? <InEnglish text={said} /> : said;
}

/** Sentences of the daemon one after the other. */
export function SaidAll({ sentences }: { sentences: readonly Told[] }) {
  return (
    <>
      {sentences.map((sentence, i) => (
        <Fragment key={`${sentence.code} ${sentence.text}`}>
          {i > 0 && ' '}
          <Said sentence={sentence} />
        </Fragment>
      ))}
    </>
  );
}

/**
 * Text of the daemon that is English whatever the page is written in, and marked so for those who
 * hear it. **Source:** WCAG 2.2, success criterion 3.1.2, language of parts.
 */
export function InEnglish({ text }: { text: string }) {
  return useReader().language === 'en' ? text : <span lang="en">{text}</span>;
}
