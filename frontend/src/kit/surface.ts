import { BarChart, LineChart, ScatterChart } from 'echarts/charts';
import { GridComponent } from 'echarts/components';
import { init, use, type EChartsType } from 'echarts/core';
import { SVGRenderer } from 'echarts/renderers';
import type { Drawing, Room, Stop } from './drawing';

use([BarChart, LineChart, ScatterChart, GridComponent, SVGRenderer]);

const REPLACED = ['grid', 'xAxis', 'yAxis', 'series'];

/** Drawings that follow each other faster than this, in milliseconds, jump: they come from a slider being dragged. */
const RESTLESS = 250;

/** Where a drawing lands: a chart of the library, or an SVG picture of our own. */
export class Surface {
  readonly #place: HTMLElement;
  #chart: EChartsType | undefined;
  #lastShown = -RESTLESS;

  /** Told which mark the pointer is on, or null when it left. */
  onMark: (mark: string | null, event: 'over' | 'click') => void = () => {};

  constructor(place: HTMLElement) {
    this.#place = place;
  }

  show(drawing: Drawing, room: Room, moving: boolean): void {
    this.#place.style.height = `${drawing.height}px`;
    if (drawing.svg !== undefined) {
      this.#place.innerHTML = drawing.svg;
      return;
    }
    const chart = (this.#chart ??= this.#open(drawing, room));
    if (chart.getWidth() !== room.width || chart.getHeight() !== drawing.height) {
      chart.resize({ width: room.width, height: drawing.height });
    }
    const now = performance.now();
    const calm = now - this.#lastShown < RESTLESS;
    this.#lastShown = now;
    const { ink, font } = room.palette;
    chart.setOption(
      {
        animation: moving && !calm,
        animationDuration: 350,
        animationDurationUpdate: 220,
        animationEasingUpdate: 'cubicOut',
        textStyle: { color: ink, fontFamily: font, fontSize: 13 },
        ...drawing.option,
      },
      { replaceMerge: REPLACED },
    );
  }

  /** Pixels of a stop, from the top left of the drawing. */
  place(stop: Stop): [x: number, y: number] {
    if (stop.grid === undefined || !this.#chart) {
      return stop.at;
    }
    const [x = 0, y = 0] = this.#chart.convertToPixel({ gridId: stop.grid }, stop.at) ?? [];
    return [x, y];
  }

  dispose(): void {
    this.#chart?.dispose();
    this.#chart = undefined;
    this.#place.replaceChildren();
  }

  #open(drawing: Drawing, room: Room): EChartsType {
    const chart = init(this.#place, null, { renderer: 'svg', width: room.width, height: drawing.height });
    chart.on('mouseover', (event) => this.onMark(markOf(event), 'over'));
    chart.on('mouseout', () => this.onMark(null, 'over'));
    chart.on('click', (event) => this.onMark(markOf(event), 'click'));
    return chart;
  }
}

function markOf(event: { seriesId?: string; dataIndex?: number }): string {
  return `${event.seriesId}/${event.dataIndex}`;
}
