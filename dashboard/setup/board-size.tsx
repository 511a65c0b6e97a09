import type { Problem } from '../../daemon/contract/problem.ts';
import type { Trade } from '../../daemon/contract/trade.ts';
import { MeasureField } from '../forms/measure-field.tsx';
import { useReader } from '../reader.ts';

/** Metric, as text. */
export interface Size {
  readonly lengthMm: string;
  readonly widthMm: string;
  readonly thicknessMm: string;
}

interface BoardSizeProps {
  trade: Trade | null;
  size: Size;
  onSize: (size: Size) => void;
  problem: Problem | null;
}

/** The size of a board: one tap for those in stock, or typed in the reader’s units. */
export function BoardSize({ trade, size, onSize, problem }: BoardSizeProps) {
  const { words, figures } = useReader();
  const { batch } = words.setup;
  return (
    <div class="when-field">
      {trade !== null && (
        <>
          <fieldset class="choice">
            <legend>{batch.sizesInStock}</legend>
            <div class="size-row">
              {trade.stockSizes.map(({ widthMm, thicknessMm }) => (
                <SizeButton
                  key={`${widthMm} ${thicknessMm}`}
                  words={`${figures.bare('lengthMm', thicknessMm)} × ${figures.bare('lengthMm', widthMm)}`}
                  chosen={
                    size.widthMm === String(widthMm) && size.thicknessMm === String(thicknessMm)
                  }
                  onTap={() =>
                    onSize({
                      ...size,
                      widthMm: String(widthMm),
                      thicknessMm: String(thicknessMm),
                    })
                  }
                />
              ))}
            </div>
          </fieldset>
          <fieldset class="choice">
            <legend>{batch.lengths}</legend>
            <div class="size-row">
              {trade.stockLengthsMm.map((lengthMm) => (
                <SizeButton
                  key={lengthMm}
                  words={figures.measure('lengthM', lengthMm / 1000)}
                  chosen={size.lengthMm === String(lengthMm)}
                  onTap={() => onSize({ ...size, lengthMm: String(lengthMm) })}
                />
              ))}
            </div>
          </fieldset>
        </>
      )}
      <div class="field-grid field-grid-three">
        {(
          [
            ['lengthMm', batch.length],
            ['widthMm', batch.width],
            ['thicknessMm', batch.thickness],
          ] as const
        ).map(([name, label]) => (
          <MeasureField
            key={`${name} ${size[name]}`}
            label={label}
            name={name}
            measure="lengthMm"
            value={size[name]}
            pointer={`/boards/${name}`}
            problem={problem}
          />
        ))}
      </div>
    </div>
  );
}

function SizeButton(props: { words: string; chosen: boolean; onTap: () => void }) {
  return (
    <button
      type="button"
      class={props.chosen ? 'button button-main' : 'button'}
      aria-pressed={props.chosen}
      onClick={props.onTap}
    >
      {props.words}
    </button>
  );
}
