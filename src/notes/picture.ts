import { imageSize } from 'image-size';

/** What a file is by its first bytes, whatever its name ends in. */
export type PictureKind = 'PNG' | 'JPEG' | 'WebP' | 'SVG' | null;

const starts = (head: Uint8Array, ascii: string, at = 0): boolean =>
  Array.from(ascii).every((sign, i) => head[at + i] === sign.charCodeAt(0));

export function pictureKind(head: Uint8Array): PictureKind {
  if (starts(head, '\x89PNG\r\n\x1a\n')) return 'PNG';
  if (head[0] === 0xff && head[1] === 0xd8 && head[2] === 0xff) return 'JPEG';
  if (starts(head, 'RIFF') && starts(head, 'WEBP', 8)) return 'WebP';
  const text = new TextDecoder('utf-8').decode(head.subarray(0, 4096)).trimStart();
  return text.startsWith('<') && /<svg[\s>]/i.test(text) ? 'SVG' : null;
}

/**
 * Width and height in pixels; null when the bytes at hand do not say. The library throws on what it cannot read, and reads on
 * behind a part of a larger buffer, so that it is given a copy.
 */
export function pictureSize(head: Uint8Array): { readonly width: number; readonly height: number } | null {
  try {
    const { width, height } = imageSize(head.slice());
    return width > 0 && height > 0 ? { width, height } : null;
  } catch {
    return null;
  }
}
