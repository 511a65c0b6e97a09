import { z } from 'zod';
import { NewPhoto, Photo } from '../photo.ts';
import { BatchReport, Season, SeasonQuery } from '../report.ts';
import type { Route } from '../route.ts';
import { WhatHelpsReply } from '../what-helps.ts';
import { ById, OfBatch } from './params.ts';

export const reportRoutes = {
  whatHelps: {
    method: 'GET',
    path: '/api/v1/batches/:id/what-helps',
    summary: 'What holds a batch back, and what would help most',
    params: ById,
    status: 200,
    reply: WhatHelpsReply,
  },
  batchReport: {
    method: 'GET',
    path: '/api/v1/batches/:id/report',
    summary: 'All of a batch for the file: conditions, coats, tests, remarks, photos',
    params: ById,
    status: 200,
    reply: BatchReport,
  },
  season: {
    method: 'GET',
    path: '/api/v1/season',
    summary: 'Days to each job by month and place, the model against tests, boards per litre',
    query: SeasonQuery,
    status: 200,
    reply: Season,
  },
  listPhotos: {
    method: 'GET',
    path: '/api/v1/batches/:id/photos',
    summary: 'The photos of a batch, without the pictures themselves',
    params: ById,
    status: 200,
    reply: z.array(Photo),
  },
  createPhoto: {
    method: 'POST',
    path: '/api/v1/batches/:id/photos',
    summary: 'Keep a photo of a batch',
    params: ById,
    body: NewPhoto,
    status: 201,
    reply: Photo,
  },
  removePhoto: {
    method: 'DELETE',
    path: '/api/v1/batches/:id/photos/:part',
    summary: 'Take a photo away; that it was there stays on record',
    params: OfBatch,
    status: 200,
    reply: z.array(Photo),
  },
} as const satisfies Record<string, Route>;
