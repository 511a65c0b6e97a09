import { z } from 'zod';
import { Notice, NoticeChange } from '../notice.ts';
import { NoticeChannels } from '../notice-channel.ts';
import type { Route } from '../route.ts';
import { ById } from './params.ts';

export const noticeRoutes = {
  listNotices: {
    method: 'GET',
    path: '/api/v1/notices',
    summary: 'What wants attention, and what did',
    status: 200,
    reply: z.array(Notice),
  },
  readNoticeChannels: {
    method: 'GET',
    path: '/api/v1/notice-channels',
    summary: 'How notices leave the house, and whether they arrive',
    status: 200,
    reply: NoticeChannels,
  },
  changeNotice: {
    method: 'PATCH',
    path: '/api/v1/notices/:id',
    summary: 'Mark a notice as seen',
    params: ById,
    body: NoticeChange,
    status: 200,
    reply: Notice,
  },
} as const satisfies Record<string, Route>;
