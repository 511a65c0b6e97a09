import jsqr from 'jsqr';
import type { Locator, Page } from 'playwright-core';

/**
 * What a phone reads in a picture of the page; the pixels are unpacked by the browser itself.
 *
 * @param code - the drawn code
 */
export async function decoded(page: Page, code: Locator): Promise<string | undefined> {
  const picture = (await code.screenshot()).toString('base64');
  const { pixels, width, height } = await page.evaluate(async (base64) => {
    const image = new Image();
    image.src = `data:image/png;base64,${base64}`;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = image.width;
    canvas.height = image.height;
    const context = canvas.getContext('2d');
    context?.drawImage(image, 0, 0);
    const data = context?.getImageData(0, 0, image.width, image.height).data ?? [];
    return { pixels: [...data], width: image.width, height: image.height };
  }, picture);
  return jsqr.default(new Uint8ClampedArray(pixels), width, height)?.data;
}
