/** Width of a text in pixels at a font size. */
export type Measure = (text: string, size: number) => number;

/** Cuts a text to a width, ending in an ellipsis; at least its first letter stays. */
export function shorten(text: string, width: number, size: number, measure: Measure): string {
  if (measure(text, size) <= width) {
    return text;
  }
  for (let length = text.length - 1; length > 1; length--) {
    const cut = `${text.slice(0, length).trimEnd()}…`;
    if (measure(cut, size) <= width) {
      return cut;
    }
  }
  return `${text.slice(0, 1)}…`;
}

/** Breaks a text into lines of at most the given width; a longer word is cut. */
export function wrap(text: string, width: number, size: number, measure: Measure): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/)) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line === '' || measure(longer, size) <= width) {
      line = longer;
    } else {
      lines.push(line);
      line = word;
    }
  }
  return [...lines, line].map((each) => shorten(each, width, size, measure));
}

const ESCAPES: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

/** Makes a text safe inside markup. */
export function escape(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => ESCAPES[sign] ?? sign);
}

const WHOLE = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 2 });

/** A bare number on an axis; the axis title carries the unit. */
export function tick(value: number): string {
  return WHOLE.format(value).replace('-', '−');
}
