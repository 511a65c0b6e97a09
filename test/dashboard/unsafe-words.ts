import type { Language } from '../../dashboard/words/language.ts';

/**
 * Words by which a page would call something safe. Those that mean “surely”, a data sheet or a copy of
 * the data share their stem and are let through.
 */
export const callsItSafe: Readonly<Record<Language, RegExp>> = {
  en: /\bsafe(ly)?\b/i,
  sv: /\b(ofarlig\w*|riskfri\w*|trygg\w*|säkert?)\b/i,
  de: /\b(sicher(e[rnms]?)?|ungefährlich\w*|gefahrlos\w*|unbedenklich\w*)\b/i,
  nb: /\b(ufarlig\w*|risikofri\w*|trygg\w*|sikkert?)\b/i,
  fi: /\b(turvalli\w*|vaarat(on|toma\w*)|riskit(ön|tömä\w*))/i,
};
