/** The forms of a thing that is counted; all five languages know these two (CLDR plural rules). */
export interface PluralForms {
  readonly one: string;
  readonly other: string;
}

const rules = new Map<string, Intl.PluralRules>();

/**
 * The form that belongs to a count.
 *
 * @param language - BCP 47 tag
 * @param count - how many
 */
export function plural(language: string, count: number, forms: PluralForms): string {
  let rule = rules.get(language);
  if (rule === undefined) {
    rule = new Intl.PluralRules(language);
    rules.set(language, rule);
  }
  return rule.select(count) === 'one' ? forms.one : forms.other;
}
