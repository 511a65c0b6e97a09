import { Language } from '../../contract/language.ts';

/** What the site speaks where no reader has chosen: mail, webhook, MQTT notices and the digest. */
export const languageSetting = Language.default('en')
  .meta({ onPage: true })
  .describe(
    'language of notices and of the digest: en, sv, de, nb or fi; each page speaks the language of its reader',
  );
