import { useReader } from './reader.ts';

/** The caution that is at the foot of every page. */
export function PageFoot() {
  const { cautions } = useReader().words;
  return (
    <footer class="foot">
      <p>
        {cautions.short} <a href="#/cautions">{cautions.link}</a>
      </p>
    </footer>
  );
}
