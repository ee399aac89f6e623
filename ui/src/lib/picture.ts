// A picture from a file, made small enough to travel: drawn anew, so that nothing but the picture is left of it (a
// phone's photo bears the place where it was taken).

/** The longer side, in pixels: twice what a card shows. */
export const LONGEST = 960;

/** Characters of base64 that the core takes; it looks again. */
export const MOST = 340_000;

/** Width and height that fit into a square of `longest`, in whole pixels; nothing is made larger. */
export function fitInto(width: number, height: number, longest: number): [number, number] {
  const by = Math.min(1, longest / Math.max(width, height, 1));
  return [Math.max(1, Math.round(width * by)), Math.max(1, Math.round(height * by))];
}

/** JPEG in base64, or null when the file is no picture that can be read. */
export async function madeSmall(file: Blob): Promise<string | null> {
  let image: ImageBitmap;
  try {
    image = await createImageBitmap(file);
  } catch {
    return null;
  }
  for (const longest of [LONGEST, LONGEST * 0.7, LONGEST * 0.5]) {
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = fitInto(image.width, image.height, longest);
    const drawing = canvas.getContext('2d');
    if (!drawing) return null;
    // What is see-through becomes paper; JPEG would make it black.
    drawing.fillStyle = '#fff';
    drawing.fillRect(0, 0, canvas.width, canvas.height);
    drawing.drawImage(image, 0, 0, canvas.width, canvas.height);
    for (const quality of [0.85, 0.7]) {
      const text = canvas.toDataURL('image/jpeg', quality).split(',')[1] ?? '';
      if (text !== '' && text.length <= MOST) return text;
    }
  }
  return null;
}
