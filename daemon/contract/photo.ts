import { z } from 'zod';
import { Id, Moment } from './moment.ts';

/** The largest picture, bytes: a phone makes it smaller before it sends it. */
export const largestPhotoBytes = 650_000;

export const NewPhoto = z.strictObject({
  id: Id.optional(),
  at: Moment,
  text: z.string().trim().max(2000).nullable().optional(),
  picture: z
    .base64()
    .max(Math.ceil(largestPhotoBytes / 3) * 4)
    .describe('the picture in base64: JPEG, PNG or WebP, at most 650 kB'),
});
export type NewPhoto = z.infer<typeof NewPhoto>;

export const Photo = z.object({
  id: Id,
  at: Moment,
  text: z.string().nullable(),
  type: z.enum(['image/jpeg', 'image/png', 'image/webp']),
  bytes: z.int(),
  address: z.string().describe('where the picture itself is served'),
});
export type Photo = z.infer<typeof Photo>;
