import type { EChartsCoreOption } from 'echarts/core';
import type { Palette } from './palette';
import type { Fill } from './pattern';
import type { Measure } from './text';

/** What a drawing function knows about where it draws. */
export interface Room {
  width: number;
  narrow: boolean;
  detail: boolean;
  palette: Palette;
  measure: Measure;
}

/** One thing to stop at by arrow key or pointer: what it says and where it is. */
export interface Stop {
  text: string;
  /** Series id and data index of the mark that shows it, as "series/3". */
  mark?: string;
  /** Position: data coordinates on the named grid, or pixels where there is no grid. */
  at: [x: number, y: number];
  grid?: string;
  /** The boat it belongs to, for the selection event. */
  boat?: string;
}

export interface LegendEntry {
  label: string;
  fill: Fill;
  shape?: 'block' | 'line' | 'dash' | 'diamond' | 'dot' | 'square' | 'triangle' | 'band';
}

/** A finished plan of a drawing, before any pixel is touched. */
export interface Drawing {
  height: number;
  stops: Stop[];
  legend: LegendEntry[];
  option?: EChartsCoreOption;
  svg?: string;
  /** The pointer finds the nearest stop instead of the mark below it. */
  nearest?: boolean;
  selectable?: boolean;
  /** Words on the switch between overview and detail, where there is one. */
  detailSwitch?: string;
}

export type Draw<D> = (data: D, room: Room) => Drawing;
