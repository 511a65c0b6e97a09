import { useEffect, useState } from 'preact/hooks';
import type { ListedSetting, SettingList } from '../../daemon/contract/setting.ts';
import { useReader } from '../reader.ts';
import type { Language } from '../words/language.ts';
import type { SettingDescriptions } from '../words/setting-descriptions.ts';

/** A setting with what it does in the reader’s language; null where that is known in English alone. */
export type DescribedSetting = ListedSetting & { readonly says: string | null };
export type DescribedList = Omit<SettingList, 'settings'> & {
  readonly settings: readonly DescribedSetting[];
};

/** Only this page needs them, so only it fetches them; the English ones come with the settings. */
const fetchDescriptions: Readonly<Record<Language, () => Promise<SettingDescriptions>>> = {
  en: async () => ({}),
  sv: async () => (await import('../words/sv/setting-descriptions.ts')).settingDescriptions,
  de: async () => (await import('../words/de/setting-descriptions.ts')).settingDescriptions,
  nb: async () => (await import('../words/nb/setting-descriptions.ts')).settingDescriptions,
  fi: async () => (await import('../words/fi/setting-descriptions.ts')).settingDescriptions,
};

/** What the settings do in one language; of English there is nothing to fetch. */
export function settingDescriptions(language: Language): Promise<SettingDescriptions> {
  return fetchDescriptions[language]();
}

/**
 * A setting as the reader is told of it. A daemon that is newer than this page may list one that is
 * described here in no language but English.
 */
export function described(
  setting: ListedSetting,
  language: Language,
  descriptions: SettingDescriptions,
): DescribedSetting {
  const says = language === 'en' ? setting.description : descriptions[setting.name]?.[1];
  return { ...setting, says: says ?? null };
}

/** The settings with what they do in the reader’s language; null until both are here. */
export function useDescribed(list: SettingList | null): DescribedList | null {
  const { language } = useReader();
  const [descriptions, setDescriptions] = useState<SettingDescriptions | null>(null);
  useEffect(() => {
    let isGone = false;
    const show = (found: SettingDescriptions) => {
      if (!isGone) setDescriptions(found);
    };
    // Where they cannot be had the English ones still say what a setting does.
    settingDescriptions(language).then(show, () => show({}));
    return () => {
      isGone = true;
    };
  }, [language]);
  if (list === null || descriptions === null) return null;
  return {
    ...list,
    settings: list.settings.map((one) => described(one, language, descriptions)),
  };
}
