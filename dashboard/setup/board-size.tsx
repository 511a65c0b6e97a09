import type { Problem } from '../../daemon/contract/problem.ts';
import type { Trade } from '../../daemon/contract/trade.ts';
import { TextField } from '../forms/field.tsx';

/** As it is typed. */
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

/** The size of a board: one tap for those in stock, or typed. */
export function BoardSize({ trade, size, onSize, problem }: BoardSizeProps) {
  return (
    <div class="when-field">
      {trade !== null && (
        <>
          <fieldset class="choice">
            <legend>Sizes in stock</legend>
            <div class="size-row">
              {trade.stockSizes.map(({ widthMm, thicknessMm }) => (
                <SizeButton
                  key={`${widthMm} ${thicknessMm}`}
                  words={`${thicknessMm} × ${widthMm}`}
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
            <legend>Lengths</legend>
            <div class="size-row">
              {trade.stockLengthsMm.map((lengthMm) => (
                <SizeButton
                  key={lengthMm}
                  words={`${lengthMm / 1000} m`}
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
            ['lengthMm', 'Length'],
            ['widthMm', 'Width'],
            ['thicknessMm', 'Thickness'],
          ] as const
        ).map(([name, label]) => (
          <TextField
            key={`${name} ${size[name]}`}
            label={label}
            name={name}
            kind="number"
            unit="mm"
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
