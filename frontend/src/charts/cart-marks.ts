import type { Room } from '../kit/drawing';
import { escape } from '../kit/text';

/** Pixels from the top left. */
export type Vector = [x: number, y: number];

export type Anchor = 'start' | 'middle' | 'end';

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

/** Words on a slip of paper, readable over lines and hues. */
export function words(text: string, x: number, y: number, anchor: Anchor, color: string, room: Room): string {
  const width = room.measure(text, 13) + 6;
  const left = { start: x - 3, middle: x - width / 2, end: x - width + 3 }[anchor];
  return (
    `<rect x="${left}" y="${y - 9}" width="${width}" height="18" rx="3" fill="${room.palette.paper}"/>` +
    `<text x="${x}" y="${y + 4.5}" text-anchor="${anchor}" fill="${color}">${escape(text)}</text>`
  );
}

/** A measured stretch between two ticks, with its length written along it: on it, or behind its end. */
export function dimension(from: Vector, to: Vector, label: string, room: Room): string {
  const { muted } = room.palette;
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy);
  const fits = length > room.measure(label, 13) + 24;
  const text = words(label, fits ? length / 2 : length + 8, 0, fits ? 'middle' : 'start', muted, room);
  return (
    `<g transform="translate(${from[0]} ${from[1]}) rotate(${(Math.atan2(dy, dx) * 180) / Math.PI})">` +
    `<path d="M0 0H${length}M0-5V5M${length}-5V5" stroke="${muted}" stroke-width="1.2" fill="none"/>${text}</g>`
  );
}
