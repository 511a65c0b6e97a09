import { describe, expect, it } from 'vitest';
import { contentDigest, hmacSignature, signatureBase } from '../../daemon/notify/http-signature.ts';

describe('a signature', () => {
  it('is that of the standard’s example', () => {
    // RFC 9421 (2024), appendix B.2.5 with the shared secret of B.1.5, from memory.
    const key = Buffer.from(
      'uzvJfB4u3N0Jy4T7NZ75MDVcr8zSTInedJtkgcu46YW4XByzNJjxBdtjUkdJPBtbmHhIDi6pcl8jsasjlTMtDQ==',
      'base64',
    );
    const { input, base } = signatureBase(
      [
        ['date', 'Tue, 20 Apr 2021 02:07:55 GMT'],
        ['@authority', 'example.com'],
        ['content-type', 'application/json'],
      ],
      { created: 1_618_884_473, keyId: 'test-shared-secret' },
    );
    expect(input).toBe(
      '("date" "@authority" "content-type");created=1618884473;keyid="test-shared-secret"',
    );
    expect(hmacSignature(key, base)).toBe('pxcQw6G3AjtMBQjwo8XzkZf/bws5LelbaMk5rGIGtE8=');
  });

  it('covers the body by the digest of the standard’s example', () => {
    // RFC 9530 (2024), appendix B.1 and RFC 9421, appendix B.2, from memory.
    expect(contentDigest('{"hello": "world"}')).toBe(
      'sha-256=:X48E9qOokqqrvdts8nOJRJN3OWDUoyWxBf7kbu9DBPE=:',
    );
  });
});
