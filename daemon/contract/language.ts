import { z } from 'zod';

/** The languages that pages and notices speak, by their BCP 47 names; nb is Norwegian bokmål. */
export const languages = ['en', 'sv', 'de', 'nb', 'fi'] as const;
export const Language = z.enum(languages);
export type Language = z.infer<typeof Language>;
