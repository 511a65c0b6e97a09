import { z } from 'zod';

export const tlsSettings = z
  .strictObject({
    certFile: z
      .string()
      .min(1)
      .nullable()
      .default(null)
      .describe(
        'certificate of this computer as PEM, those of the way to its authority after it; one is made and kept fresh when left out',
      ),
    keyFile: z
      .string()
      .min(1)
      .nullable()
      .default(null)
      .describe('its private key as PEM, readable for the daemon alone'),
  })
  .refine(({ certFile, keyFile }) => (certFile === null) === (keyFile === null), {
    message: 'comes together with certFile: a certificate is of no use without its key',
    path: ['keyFile'],
  })
  .prefault({});
