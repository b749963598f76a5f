import type { Palette } from './palette';

/** Carries the meaning beside the hue, on grey paper and for eyes that mix hues up. */
export type Pattern = 'plain' | 'slash' | 'dots' | 'bars' | 'back' | 'lines' | 'peaks' | 'grid';

export interface Fill {
  color: string;
  pattern: Pattern;
}

const ORDER: [series: 0 | 1 | 2 | 3, pattern: Pattern][] = [
  [0, 'plain'],
  [1, 'slash'],
  [2, 'dots'],
  [3, 'bars'],
  [0, 'back'],
  [1, 'lines'],
  [2, 'peaks'],
  [3, 'grid'],
];

/** The n-th look: four hues, each with a pattern of its own, then the same hues with other patterns. */
export function fillAt(palette: Palette, index: number): Fill {
  const [series, pattern] = ORDER[index % ORDER.length] ?? [0, 'plain'];
  return { color: palette.series[series], pattern };
}

const HATCH = 'rgba(255,255,255,0.5)';

/** The pattern as the chart library wants it, or null for none. */
export function decal(pattern: Pattern, color = HATCH): object | null {
  const stripes = { symbol: 'rect', dashArrayX: [1, 0], color };
  switch (pattern) {
    case 'plain':
      return null;
    case 'slash':
      return { ...stripes, dashArrayY: [2, 6], rotation: -Math.PI / 4 };
    case 'back':
      return { ...stripes, dashArrayY: [2, 6], rotation: Math.PI / 4 };
    case 'bars':
      return { ...stripes, dashArrayY: [2, 6], rotation: Math.PI / 2 };
    case 'lines':
      return { ...stripes, dashArrayY: [2, 5], rotation: 0 };
    case 'dots':
      return { symbol: 'circle', symbolSize: 0.9, color, dashArrayX: [[5, 5], [0, 5, 5, 0]], dashArrayY: [5, 0] };
    case 'peaks':
      return { symbol: 'triangle', symbolSize: 0.9, color, dashArrayX: [[7, 7], [0, 7, 7, 0]], dashArrayY: [7, 1] };
    case 'grid':
      return { symbol: 'rect', symbolSize: 0.8, color, dashArrayX: [[4, 4], [0, 4, 4, 0]], dashArrayY: [4, 0] };
  }
}

/** The pattern as marks on an 8 by 8 tile, for drawings of our own and for the legend. */
function tileMarks(pattern: Pattern): string {
  switch (pattern) {
    case 'plain':
      return '';
    case 'slash':
      return '<path d="M-2 2L2-2M0 8L8 0M6 10L10 6" stroke-width="2"/>';
    case 'back':
      return '<path d="M-2 6L2 10M0 0L8 8M6-2L10 2" stroke-width="2"/>';
    case 'bars':
      return '<path d="M4 0V8" stroke-width="2"/>';
    case 'lines':
      return '<path d="M0 4H8" stroke-width="2"/>';
    case 'dots':
      return '<circle cx="2" cy="2" r="1.2"/><circle cx="6" cy="6" r="1.2"/>';
    case 'peaks':
      return '<path d="M1 6L4 1L7 6Z" stroke="none"/>';
    case 'grid':
      return '<path d="M0 0H4V4H0ZM4 4H8V8H4Z" stroke="none"/>';
  }
}

/** An SVG pattern element under the given id. */
export function svgPattern(id: string, fill: Fill, mark = HATCH): string {
  return (
    `<pattern id="${id}" width="8" height="8" patternUnits="userSpaceOnUse">` +
    `<rect width="8" height="8" fill="${fill.color}"/>` +
    `<g fill="${mark}" stroke="${mark}">${tileMarks(fill.pattern)}</g></pattern>`
  );
}
