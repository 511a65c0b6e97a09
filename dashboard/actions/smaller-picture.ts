/** Longest edge that is kept, px: enough to see a knot on a screen and on paper. */
const LONGEST_PX = 1600;
/** As the contract has it, bytes. */
const MOST_BYTES = 650_000;
const QUALITIES = [0.85, 0.7, 0.5, 0.3];

/**
 * Makes a photo small enough to be kept, as JPEG in base64. What a camera writes beside it, such as
 * where it was taken, is left behind.
 *
 * @returns null when the file is no picture
 */
export async function smallerPicture(file: Blob): Promise<string | null> {
  const image = await createImageBitmap(file).catch(() => null);
  if (image === null) return null;
  const scale = Math.min(1, LONGEST_PX / Math.max(image.width, image.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(image.width * scale));
  canvas.height = Math.max(1, Math.round(image.height * scale));
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  image.close();
  for (const quality of QUALITIES) {
    const base64 = canvas.toDataURL('image/jpeg', quality).split(',')[1] ?? '';
    if ((base64.length / 4) * 3 <= MOST_BYTES) return base64;
  }
  return null;
}
