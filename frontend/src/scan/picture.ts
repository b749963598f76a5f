import { pixels } from './camera';
import { fitted, read, type Reading } from './reading';

/** A code that fills a photo is best read small, one in a corner of it large. */
const SIDES = [1024, 2048, 512];
const PATIENCE_MS = 400;

/** Looks for the code in a picture that somebody chose; it stays in the browser. Fails if it is no picture. */
export async function readPicture(file: Blob): Promise<Reading> {
  const picture = await createImageBitmap(file);
  try {
    return search(picture);
  } finally {
    picture.close();
  }
}

function search(picture: ImageBitmap): Reading {
  const board = document.createElement('canvas');
  for (const side of SIDES) {
    const reading = read(pixels(board, picture, fitted(picture.width, picture.height, side)), PATIENCE_MS);
    if (reading.kind !== 'none') {
      return reading;
    }
  }
  return { kind: 'none' };
}
