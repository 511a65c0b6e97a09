/** A picture of a batch, without its bytes. */
export interface PhotoFact {
  id: string;
  batchId: string;
  /** UTC epoch ms. */
  at: number;
  text: string | null;
  type: PictureType;
  bytes: number;
}

export type PictureType = 'image/jpeg' | 'image/png' | 'image/webp';

const starts: Readonly<Record<PictureType, (bytes: Uint8Array) => boolean>> = {
  'image/jpeg': (bytes) => begins(bytes, [0xff, 0xd8, 0xff]),
  'image/png': (bytes) => begins(bytes, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
  'image/webp': (bytes) =>
    begins(bytes, [0x52, 0x49, 0x46, 0x46]) && begins(bytes.subarray(8), [0x57, 0x45, 0x42, 0x50]),
};

/**
 * What kind of picture bytes are, by how they begin; null for anything else.
 *
 * **Source:** JPEG: ITU-T T.81, marker SOI; PNG: ISO/IEC 15948, section 5.2; WebP: RFC 9649, section 2.4.
 */
export function pictureType(bytes: Uint8Array): PictureType | null {
  for (const [type, is] of Object.entries(starts) as [PictureType, (of: Uint8Array) => boolean][]) {
    if (is(bytes)) return type;
  }
  return null;
}

function begins(bytes: Uint8Array, start: readonly number[]): boolean {
  return bytes.length >= start.length && start.every((byte, i) => bytes[i] === byte);
}
