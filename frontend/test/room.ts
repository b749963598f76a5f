import type { Room } from '../src/kit/drawing';
import type { Palette } from '../src/kit/palette';

const palette: Palette = {
  dark: false,
  paper: 'rgb(255, 255, 255)',
  ink: 'rgb(23, 48, 58)',
  muted: 'rgb(81, 100, 108)',
  line: 'rgb(214, 223, 224)',
  wash: 'rgb(238, 243, 242)',
  neutral: 'rgb(123, 137, 143)',
  focus: 'rgb(0, 90, 140)',
  series: ['rgb(0, 114, 178)', 'rgb(213, 94, 0)', 'rgb(0, 158, 115)', 'rgb(204, 121, 167)'],
  depth: ['#0b4a63', '#2f7590', '#6aa3b8', '#9cc4d2', '#c4dde5', '#e2eff2'],
  font: 'sans-serif',
};

/** A room of the given width in which every letter is 0.56 of its size wide. */
export function roomOf(width: number, detail = false): Room {
  return { width, narrow: width < 560, detail, palette, measure: (text, size) => text.length * size * 0.56 };
}
