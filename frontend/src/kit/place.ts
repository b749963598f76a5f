/** Finds a free spot for each label beside its point. */

export interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}

export interface Wanted {
  x: number;
  y: number;
  /** Widths to try, the fullest wording first. */
  widths: number[];
  height: number;
  /** Half the size of the mark itself. */
  radius: number;
}

export interface Placed {
  side: Side;
  width: number;
}

/** The corner of a mark where its label stands; straight sides stay free for spread lines. */
export type Side = 'upper-right' | 'lower-right' | 'upper-left' | 'lower-left';

/** To the right as names read, shorter if need be; to the left only then. */
const ALL_SIDES: Side[][] = [
  ['upper-right', 'lower-right'],
  ['upper-left', 'lower-left'],
];
const GAP = 4;

function boxAt({ x, y, height }: Wanted, { side, width }: Placed): Box {
  return {
    x: side.endsWith('right') ? x + GAP : x - GAP - width,
    y: side.startsWith('upper') ? y - GAP - height : y + GAP,
    width,
    height,
  };
}

/** The same spot in the chart library's words: an offset from the top left of a mark of the given size. */
export function labelAt(side: Side, size: number): object {
  const right = side.endsWith('right');
  const upper = side.startsWith('upper');
  return {
    position: [size / 2 + (right ? GAP : -GAP), size / 2 + (upper ? -GAP : GAP)],
    align: right ? 'left' : 'right',
    verticalAlign: upper ? 'bottom' : 'top',
  };
}

export function overlaps(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

function inside(box: Box, room: Box): boolean {
  return (
    box.x >= room.x && box.y >= room.y && box.x + box.width <= room.x + room.width && box.y + box.height <= room.y + room.height
  );
}

/**
 * Chooses a corner for each label in turn, or null where every corner would hide a mark or an earlier label; that
 * label is then left to the pointer and the table.
 */
export function placeLabels(wanted: Wanted[], room: Box): (Placed | null)[] {
  const taken: Box[] = wanted.map(({ x, y, radius }) => ({ x: x - radius, y: y - radius, width: radius * 2, height: radius * 2 }));
  return wanted.map((each, index) => {
    const choices = ALL_SIDES.flatMap((sides) => each.widths.flatMap((width) => sides.map((side) => ({ side, width }))));
    const choice = choices.find((candidate) => {
      const box = boxAt(each, candidate);
      return inside(box, room) && taken.every((other, at) => at === index || !overlaps(box, other));
    });
    if (choice === undefined) {
      return null;
    }
    taken.push(boxAt(each, choice));
    return choice;
  });
}
