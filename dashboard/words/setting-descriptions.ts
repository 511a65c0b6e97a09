/**
 * What each setting does, by its name. The English texts are those of the settings schema, sent with
 * each setting; `of` marks which of them was translated: the first four digits of its SHA-256. When
 * an English text changes a test names the translations of before and the mark of the new ones.
 */
export type SettingDescriptions = Readonly<Record<string, readonly [of: string, says: string]>>;
