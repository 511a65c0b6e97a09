import { type FieldFrame, Framed } from './field.tsx';

/** A labelled PIN, which nobody reads over a shoulder. */
export function PinField({ name, isNew, ...frame }: FieldFrame & { name: string; isNew: boolean }) {
  return (
    <Framed {...frame}>
      {(attributes) => (
        <input
          {...attributes}
          class="input"
          name={name}
          type="password"
          autocomplete={isNew ? 'new-password' : 'current-password'}
        />
      )}
    </Framed>
  );
}
