import { z } from 'zod';
import { Id } from '../moment.ts';

/** The part of a path that names one thing. */
export const ById = z.strictObject({ id: Id });
/** A batch, and one thing that was recorded of it. */
export const OfBatch = z.strictObject({ id: Id, part: Id });
