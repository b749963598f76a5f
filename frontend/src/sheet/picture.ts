import encodeQR from 'qr';

/** The white edge that readers need around a code, in modules (ISO/IEC 18004). */
export const QUIET_MODULES = 4;

/**
 * Draws a code as a QR code with its quiet zone, row by row; `true` is dark. Digits, capital letters and hyphens take five and
 * a half bits each that way; level M still reads with about 15 % of it hidden or dirty.
 */
export function modules(code: string): boolean[][] {
  return encodeQR(code, 'raw', { encoding: 'alphanumeric', ecc: 'medium', border: QUIET_MODULES });
}

/** Writes the dark modules as the path of a drawing one unit a module, each run in a row as one bar. */
export function path(rows: readonly (readonly boolean[])[]): string {
  const bars: string[] = [];
  rows.forEach((row, y) => {
    for (let x = 0; x < row.length; x++) {
      const start = x;
      while (row[x]) {
        x++;
      }
      if (x > start) {
        bars.push(`M${start} ${y}h${x - start}v1H${start}z`);
      }
    }
  });
  return bars.join('');
}
