import { z } from 'zod';

/** What someone may do, each including those before it. */
export const roles = ['look', 'operate', 'own'] as const;
export const Role = z
  .enum(roles)
  .describe(
    'look: see everything; operate: record work; own: settings, PINs, devices and the passwords of sensors',
  );
export type Role = z.infer<typeof Role>;

/** What a route asks of whoever calls it; `anyone` also without being let in. */
export type NeededRole = 'anyone' | Role;
