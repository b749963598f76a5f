import type { Room } from './drawing';
import { shorten } from './text';
import { niceScale, type Scale } from './scale';

/** A stack of horizontal bars with a name each: beside the bar where there is room, above it where there is not. */
export interface Rows {
  left: number;
  top: number;
  barHeight: number;
  height: number;
  width: number;
  fontSize: number;
  yAxis: object;
  grid: object;
  /** A hidden axis with {@link LANES} lanes a row, for marks beside the middle of a row. */
  lanes: object;
}

const LANES = 10;

/** The lane just below the bar of a row, and the one at its upper edge. */
export const LOWER_LANE = 8;
export const UPPER_LANE = 1;

/** Number of a lane of a row on the hidden axis. */
export function lane(row: number, at: number): number {
  return row * LANES + at;
}

export interface RowsNeed {
  names: string[];
  /** Kept free at the right for what is written behind the bars. */
  right: number;
  /** Kept free below for the axis. */
  bottom: number;
  top?: number;
  /** Least room at the left, where an axis number would stand out beyond the plot. */
  left?: number;
  gridId?: string;
  /** Kept free inside each row, below its bar. */
  below?: number;
  /** Kept free to the right of a name that stands above its bar. */
  besideName?: number;
}

export const TEXT = 13;

export function planRows(room: Room, need: RowsNeed): Rows {
  const { narrow, palette, measure } = room;
  const below = need.below ?? 0;
  const barHeight = below > 0 ? 20 : 26;
  const rowHeight = (narrow ? 56 : 42) + below;
  const top = (need.top ?? 4) + (narrow ? 8 : 0);
  const widest = Math.max(0, ...need.names.map((name) => measure(name, TEXT)));
  const left = narrow ? (need.left ?? 8) : Math.ceil(Math.min(widest, room.width * 0.24)) + 14;
  const width = Math.max(40, room.width - left - need.right);
  const height = need.names.length * rowHeight;
  const gridId = need.gridId ?? 'main';
  const nameRoom = narrow ? room.width - left - 4 - (need.besideName ?? 0) : left - 12;
  return {
    left,
    top,
    barHeight,
    height: top + height + need.bottom,
    width,
    fontSize: TEXT,
    grid: { id: gridId, left, top, width, height, outerBoundsMode: 'none' },
    lanes: {
      id: `${gridId}-lanes`,
      gridId,
      type: 'category',
      inverse: true,
      show: false,
      data: Array.from({ length: need.names.length * LANES }, (_, lane) => lane),
    },
    yAxis: {
      id: `${gridId}-rows`,
      gridId,
      type: 'category',
      inverse: true,
      data: need.names.map((name) => shorten(name, nameRoom, TEXT, measure)),
      axisLine: { show: false },
      axisTick: { show: false },
      z: 5,
      axisLabel: { color: palette.ink, fontSize: TEXT, interval: 0, ...rim(room), ...(narrow ? above(barHeight) : { margin: 10 }) },
    },
  };
}

/** A rim of paper around words that lines may cross. */
function rim(room: Room): object {
  return { textBorderColor: room.palette.paper, textBorderWidth: 3 };
}

function above(barHeight: number): object {
  return { inside: true, margin: 0, align: 'left', verticalAlign: 'bottom', padding: [0, 0, barHeight / 2 + 3, 0] };
}

/** A number axis below a plot of the given width. */
export function numberAxis(room: Room, scale: Scale, format: (value: number) => string, title?: string): object {
  const { palette } = room;
  return {
    type: 'value',
    ...scale,
    axisLine: { show: false },
    axisTick: { show: false },
    splitLine: { lineStyle: { color: palette.line } },
    axisLabel: { color: palette.muted, fontSize: 12, hideOverlap: true, formatter: format },
    ...(title ? { name: title, nameLocation: 'middle', nameGap: 30, nameTextStyle: { color: palette.muted, fontSize: 12 } } : {}),
  };
}

/** Room for a number of five digits below the axis. */
const STEP_WIDTH = 46;

/** A round scale whose steps leave room for their numbers. */
export function scaleFor(low: number, high: number, width: number): Scale {
  return niceScale(low, high, Math.max(2, Math.min(8, Math.floor(width / STEP_WIDTH))));
}

/** A text on a small slip of paper, readable over any hue or pattern. */
export function slip(room: Room, extra: object = {}): object {
  return {
    color: room.palette.ink,
    backgroundColor: room.palette.paper,
    borderRadius: 3,
    padding: [2, 4],
    fontSize: 12,
    ...extra,
  };
}

/** A mark that only carries words: nothing is drawn but its label. */
export function wordMark(value: [x: number, y: number], label: object): object {
  return { value, symbolSize: 1, itemStyle: { color: 'transparent', opacity: 1 }, label: { show: true, ...label } };
}
