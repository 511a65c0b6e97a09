import type { Page } from 'playwright-core';

/**
 * How many pixels of a picture have which colour, as 0xRRGGBB; unpacked by the browser itself.
 *
 * @param picture - PNG without transparency
 */
export async function colourCounts(
  page: Page,
  picture: Buffer,
): Promise<ReadonlyMap<number, number>> {
  const counts = await page.evaluate(async (base64) => {
    const image = new Image();
    image.src = `data:image/png;base64,${base64}`;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = image.width;
    canvas.height = image.height;
    const context = canvas.getContext('2d');
    context?.drawImage(image, 0, 0);
    const bytes = context?.getImageData(0, 0, image.width, image.height).data;
    if (!bytes) throw new Error('the picture could not be unpacked');
    const found = new Map<number, number>();
    for (let i = 0; i < bytes.length; i += 4) {
      const colour = ((bytes[i] ?? 0) << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
      found.set(colour, (found.get(colour) ?? 0) + 1);
    }
    return [...found];
  }, picture.toString('base64'));
  return new Map(counts);
}
