import type { Sign } from '../words/sign.ts';

/**
 * The shape beside the word: a board’s end and what it stands for. A hanging drop, a thumb’s
 * print, whole and solid, crossed battens; an outline where there is no verdict.
 */
export function SignMark({ sign }: { sign: Sign }) {
  return (
    <svg class={`sign-mark sign-mark-${sign}`} viewBox="0 0 48 40" aria-hidden="true">
      {drawings[sign]}
    </svg>
  );
}

const end = <path class="mark-line" d="M3 6H45V26H3Z" />;

const drawings = {
  wait: (
    <>
      {end}
      <path
        class="mark-solid"
        d="M24 26C24 26 18.5 31.5 18.5 34.4A5.5 5.1 0 0 0 29.5 34.4C29.5 31.5 24 26 24 26Z"
      />
    </>
  ),
  test: (
    <>
      <path class="mark-line" d="M3 3H45V37H3Z" />
      <path class="mark-line" d="M14 31V20A10 10 0 0 1 34 20V31" />
      <path class="mark-line" d="M20 33V21A4.2 4.2 0 0 1 28.4 21V33" />
    </>
  ),
  ready: (
    <>
      <path class="mark-solid" d="M3 3H45V18.5H3Z" />
      <path class="mark-solid" d="M3 21.5H45V37H3Z" />
    </>
  ),
  hold: (
    <>
      <path class="mark-line" d="M3 6H45V34H3Z" />
      <path class="mark-batten" d="M6 9L42 31M42 9L6 31" />
    </>
  ),
  bare: end,
  done: <path class="mark-solid" d="M3 6H45V34H3Z" />,
  empty: <path class="mark-dash" d="M3 6H45V34H3Z" />,
  'no-data': <path class="mark-dash" d="M3 6H45V34H3ZM16 20H32" />,
} satisfies Record<Sign, preact.JSX.Element>;
