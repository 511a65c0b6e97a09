import { shortCaution } from './words/caution-words.ts';

/** The caution that is at the foot of every page. */
export function PageFoot() {
  return (
    <footer class="foot">
      <p>
        {shortCaution} <a href="#/cautions">Cautions</a>
      </p>
    </footer>
  );
}
