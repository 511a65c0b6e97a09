import type { Route } from '../route.ts';
import { SettingList, SettingWish } from '../setting.ts';

export const settingRoutes = {
  listSettings: {
    method: 'GET',
    path: '/api/v1/settings',
    summary: 'Every setting in force, where it came from and how it is changed; secrets masked',
    role: 'operate',
    status: 200,
    reply: SettingList,
  },
  changeSettings: {
    method: 'PATCH',
    path: '/api/v1/settings',
    summary: 'Chooses settings, all or none; what may be chosen says `changes: here` in the list',
    role: 'own',
    body: SettingWish,
    status: 200,
    reply: SettingList,
  },
} as const satisfies Record<string, Route>;
