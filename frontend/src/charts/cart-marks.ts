import type { Room } from '../kit/drawing';
import type { Palette } from '../kit/palette';
import { escape } from '../kit/text';

/** Pixels from the top left. */
export type Vector = [x: number, y: number];

/** Ends of dimension lines. */
export function arrowHeads(palette: Palette): string {
  return (
    '<marker id="tick" viewBox="0 0 2 10" refX="1" refY="5" markerWidth="2" markerHeight="10" markerUnits="userSpaceOnUse" orient="auto">' +
    `<path d="M1 0V10" stroke="${palette.muted}" stroke-width="1.5"/></marker>`
  );
}

/** A force: a stout shaft with a head, edged in paper so that it stays apart from what it crosses. */
export function arrow(tail: Vector, tip: Vector, color: string, name: string): string {
  const [dx, dy] = [tip[0] - tail[0], tip[1] - tail[1]];
  const length = Math.hypot(dx, dy) || 1;
  const [ux, uy] = [dx / length, dy / length];
  const neck: Vector = [tip[0] - ux * 11, tip[1] - uy * 11];
  const wing = (side: number): string => `${neck[0] - uy * 6 * side} ${neck[1] + ux * 6 * side}`;
  return (
    `<g data-force="${escape(name)}" stroke="${color}" fill="${color}">` +
    `<path d="M${tail[0]} ${tail[1]}L${neck[0]} ${neck[1]}" stroke-width="3.5"/>` +
    `<path d="M${tip[0]} ${tip[1]}L${wing(1)}L${wing(-1)}Z" stroke="none"/></g>`
  );
}

/** Words with a rim of paper, readable over lines. */
export function words(text: string, x: number, y: number, anchor: string, color: string, paper: string): string {
  return (
    `<text x="${x}" y="${y}" text-anchor="${anchor}" dominant-baseline="middle" fill="${color}" ` +
    `stroke="${paper}" stroke-width="4" paint-order="stroke" stroke-linejoin="round">${escape(text)}</text>`
  );
}

/** A measured stretch between two ticks, with its length written on it or beside it. */
export function dimension(from: Vector, to: Vector, label: string, room: Room): string {
  const { muted, paper } = room.palette;
  const fits = Math.hypot(to[0] - from[0], to[1] - from[1]) > room.measure(label, 13) + 24;
  const [x, y] = fits ? [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2] : [to[0] + 8, to[1]];
  return (
    `<path d="M${from[0]} ${from[1]}L${to[0]} ${to[1]}" stroke="${muted}" stroke-width="1.2" marker-start="url(#tick)" marker-end="url(#tick)"/>` +
    words(label, x, y, fits ? 'middle' : 'start', muted, paper)
  );
}
