import { decodeQR } from 'qr/decode.js';

/** Longer than any code of a field sheet; what is longer is of another kind. */
const LONGEST = 400;
const SHORTEST = 12;
const FIELD_CODE = /^(?:[0-9A-HJKMNP-TV-Z]{5}-)*[0-9A-HJKMNP-TV-Z]{1,5}$/;

/** What was found in a picture. */
export type Reading = { readonly kind: 'code'; readonly code: string } | { readonly kind: 'other' | 'none' };

/** Looks for the QR code of a field sheet; `patienceMs` is spent at most on looking again more closely. */
export function read(pixels: ImageData, patienceMs: number): Reading {
  let text: string;
  try {
    text = decodeQR(pixels, { timeLimit: patienceMs });
  } catch {
    return { kind: 'none' };
  }
  return sort(text);
}

/** Tells a field sheet's code from any other text. Whether it adds up, the program finds out. */
export function sort(text: string): Reading {
  const ours = text.length >= SHORTEST && text.length <= LONGEST && FIELD_CODE.test(text);
  return ours ? { kind: 'code', code: text } : { kind: 'other' };
}

/** Makes a size fit into a square without enlarging it. */
export function fitted(width: number, height: number, most: number): { width: number; height: number } {
  const share = Math.min(1, most / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * share)), height: Math.max(1, Math.round(height * share)) };
}
