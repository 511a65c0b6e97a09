import { typedNumber } from '../format/typed-number.ts';

/** The text of a field, trimmed; empty when it is not in the form. */
export function textOf(form: FormData, name: string): string {
  const value = form.get(name);
  return typeof value === 'string' ? value.trim() : '';
}

/** A number that must be there; NaN is sent as null, and the daemon names the field. */
export function numberOf(form: FormData, name: string): number {
  return typedNumber(textOf(form, name));
}

/** A number that may be left out: null when nothing was typed. */
export function optionalNumberOf(form: FormData, name: string): number | null {
  return textOf(form, name) === '' ? null : numberOf(form, name);
}
