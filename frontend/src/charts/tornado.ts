import type { Draw, LegendEntry, Room, Stop } from '../kit/drawing';
import { decal, type Fill } from '../kit/pattern';
import { lane, LOWER_LANE, numberAxis, planRows, scaleFor, slip, wordMark, type Rows } from '../kit/rows';
import { toPixels, type Scale } from '../kit/scale';
import { shorten, tick } from '../kit/text';
import type { TornadoBar, TornadoData } from '../model';

interface Part {
  id: string;
  fill: Fill;
  length: (bar: TornadoBar) => number;
}

/** How far each factor alone could move the lead; what lies beyond zero changes the choice. */
export const tornado: Draw<TornadoData> = (data, room) => {
  const names = data.bars.map((bar) => bar.factor);
  const rows = planRows(room, { names, right: 20, left: 20, bottom: 62, below: 16, top: 22 });
  const scale = scaleFor(
    Math.min(0, ...data.bars.map((bar) => bar.low.value)),
    Math.max(data.now.value, ...data.bars.map((bar) => bar.high.value)),
    rows.width,
  );
  return {
    height: rows.height,
    stops: data.bars.map((bar, row) => stopOf(bar, row)),
    legend: legend(data, room),
    nearest: true,
    option: {
      grid: [rows.grid],
      xAxis: [{ id: 'lead', gridId: 'main', ...(numberAxis(room, scale, tick, data.axis) as object) }],
      yAxis: [rows.yAxis, rows.lanes],
      series: [
        ...parts(data, room).map((part) => partSeries(part, data, room, rows)),
        upright('zero', 0, names.length, { color: room.palette.ink, width: 2.5 }),
        upright('now', data.now.value, names.length, { color: room.palette.ink, width: 1.5, type: [5, 4] }),
        heads(data, room, rows, scale),
        meanings(data, room, rows, scale),
      ],
    },
  };
};

/** Pieces of a bar from zero outwards; the first one is empty space up to where the swing starts. */
function parts(data: TornadoData, room: Room): Part[] {
  const now = data.now.value;
  const { series, neutral } = room.palette;
  const start = (bar: TornadoBar): number => Math.max(0, Math.min(bar.low.value, now));
  return [
    { id: 'space', fill: { color: 'transparent', pattern: 'plain' }, length: start },
    { id: 'lost', fill: { color: series[1], pattern: 'slash' }, length: (bar) => Math.min(0, bar.low.value) },
    { id: 'less', fill: { color: neutral, pattern: 'lines' }, length: (bar) => Math.max(0, now - start(bar)) },
    { id: 'more', fill: { color: series[0], pattern: 'plain' }, length: (bar) => Math.max(0, bar.high.value - now) },
  ];
}

function partSeries(part: Part, data: TornadoData, room: Room, rows: Rows): object {
  const seen = part.id !== 'space';
  return {
    id: part.id,
    type: 'bar',
    stack: 'swing',
    barWidth: rows.barHeight,
    emphasis: { disabled: true },
    silent: !seen,
    itemStyle: seen
      ? { color: part.fill.color, borderColor: room.palette.paper, borderWidth: 1, decal: decal(part.fill.pattern) }
      : { color: 'transparent' },
    data: data.bars.map(part.length),
  };
}

function upright(id: string, at: number, count: number, style: object): object {
  const data = [[at, lane(0, 0)], [at, lane(count, 0) - 1]];
  return { id, type: 'line', yAxisId: 'main-lanes', symbol: 'none', silent: true, z: 4, lineStyle: style, data };
}

/** Words at the top of the two upright lines, turned away from each other. */
function heads(data: TornadoData, room: Room, rows: Rows, scale: Scale): object {
  const words = 'lead gone';
  const roomAtLeft = rows.left + toPixels(0, scale, rows.width) > room.measure(words, 12) + 8;
  const look = { color: room.palette.ink, fontSize: 12, verticalAlign: 'bottom' };
  const head = (at: number, align: string, formatter: string): object =>
    wordMark([at, lane(0, 0)], { ...look, align, formatter, position: [0, -6] });
  return {
    id: 'heads',
    type: 'scatter',
    yAxisId: 'main-lanes',
    silent: true,
    data: [
      head(0, roomAtLeft ? 'right' : 'left', words),
      head(data.now.value, 'left', `now ${data.now.label}`),
    ],
  };
}

function meanings(data: TornadoData, room: Room, rows: Rows, scale: Scale): object {
  return {
    id: 'meanings',
    type: 'scatter',
    z: 6,
    yAxisId: 'main-lanes',
    silent: true,
    data: data.bars.map((bar, row) => {
      const flip = bar.flip === null ? '' : ` · ${bar.flip}`;
      const words = shorten(`${bar.lowMeans} … ${bar.highMeans}${flip}`, rows.width, 12, room.measure);
      return wordMark([scale.min, lane(row, LOWER_LANE)], slip(room, { position: 'right', distance: 0, color: room.palette.muted, formatter: words }));
    }),
  };
}

function legend(data: TornadoData, room: Room): LegendEntry[] {
  const words: Record<string, string> = { less: 'lead shrinks', more: 'lead grows', lost: 'another boat would be chosen' };
  return parts(data, room)
    .filter((part) => part.id in words)
    .map((part) => ({ label: words[part.id] ?? '', fill: part.fill }));
}

function stopOf(bar: TornadoBar, row: number): Stop {
  const lines = [
    bar.factor,
    `${bar.low.label} with ${bar.lowMeans}`,
    `${bar.high.label} with ${bar.highMeans}`,
    bar.flip === null ? 'Never changes the choice by itself' : `The choice ${bar.flip}`,
  ];
  return { text: lines.join('\n'), at: [(bar.low.value + bar.high.value) / 2, row], grid: 'main' };
}
