/**
 * The forms of a thing that is counted; all five languages know these two (CLDR plural rules). A `#`
 * in them stands for the count.
 */
export interface PluralForms {
  readonly one: string;
  readonly other: string;
}

interface Counting {
  readonly rule: Intl.PluralRules;
  readonly digits: Intl.NumberFormat;
}

const known = new Map<string, Counting>();

/**
 * The form that belongs to a count, with the count in the language’s own digits and grouping.
 *
 * @param language - BCP 47 tag
 * @param count - how many
 */
export function plural(language: string, count: number, forms: PluralForms): string {
  let counting = known.get(language);
  if (counting === undefined) {
    counting = {
      rule: new Intl.PluralRules(language),
      digits: new Intl.NumberFormat(language, { maximumFractionDigits: 1 }),
    };
    known.set(language, counting);
  }
  const form = counting.rule.select(count) === 'one' ? forms.one : forms.other;
  return form.replace('#', counting.digits.format(count));
}
