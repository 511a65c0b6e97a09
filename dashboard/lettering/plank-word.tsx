import { LETTER_HEIGHT, layWord } from './planks.ts';

interface PlankWordProps {
  /** Capitals to lay. */
  word: string;
  /** What a screen reader says instead. */
  spoken: string;
  /** Outlined only: what is shown is not fresh. */
  hollow?: boolean;
}

/** The verdict word laid from planks; its height comes from the style sheet. */
export function PlankWord({ word, spoken, hollow = false }: PlankWordProps) {
  const laid = layWord(word);
  return (
    <span class="plank-word">
      <span class="spoken">{spoken}</span>
      <svg
        class={hollow ? 'plank-letters plank-letters-hollow' : 'plank-letters'}
        viewBox={`0 0 ${laid.width} ${LETTER_HEIGHT}`}
        aria-hidden="true"
        focusable="false"
      >
        <path d={laid.path} />
      </svg>
    </span>
  );
}
