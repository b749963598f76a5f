import type { Draw, Room, Stop } from '../kit/drawing';
import { numberAxis, scaleFor, TEXT } from '../kit/rows';
import { toPixels, type Scale } from '../kit/scale';
import { shorten, tick } from '../kit/text';
import type { CostDotsData } from '../model';

type Boat = CostDotsData['boats'][number];

interface Strip {
  /** Pixels from the top of the plot. */
  head: number;
  base: number;
  piles: Pile[];
}

export interface Pile {
  center: number;
  dots: number[];
}

const LEFT = 22;
const RIGHT = 26;
const LINE = 20;

/** Twenty equally likely costs a boat: to say how often it could cost more than a sum, count dots. */
export const costDots: Draw<CostDotsData> = (data, room) => {
  const width = Math.max(60, room.width - LEFT - RIGHT);
  const dot = Math.max(8, Math.min(14, Math.floor(width / 45)));
  const all = data.boats.flatMap((boat) => boat.dots);
  const scale = scaleFor(Math.min(...all), Math.max(...all), width);
  const head = LINE * (room.narrow ? 2 : 1) + 2;
  const strips = planStrips(data, scale, width, dot, head);
  const height = (strips.at(-1)?.base ?? 0) + 12;
  const count = data.boats[0]?.dots.length ?? 0;
  return {
    height: height + 62,
    stops: data.boats.flatMap((boat, index) => stopsOf(boat, strips[index]!, dot, scale, width)),
    legend: [
      { label: `one dot: 1 future in ${count}`, fill: { color: room.palette.series[0], pattern: 'plain' }, shape: 'dot' },
      { label: 'as likely above as below', fill: { color: room.palette.ink, pattern: 'plain' }, shape: 'diamond' },
    ],
    nearest: true,
    selectable: true,
    option: {
      grid: [{ id: 'main', left: LEFT, top: 6, width, height, outerBoundsMode: 'none' }],
      xAxis: [{ id: 'cost', gridId: 'main', ...(numberAxis(room, scale, tick, data.axis) as object) }],
      yAxis: [{ id: 'pixels', gridId: 'main', type: 'value', min: 0, max: height, inverse: true, show: false }],
      series: data.boats.flatMap((boat, index) => stripSeries(boat, index, strips[index]!, dot, scale, room)),
    },
  };
};

function planStrips(data: CostDotsData, scale: Scale, width: number, dot: number, space: number): Strip[] {
  let top = 0;
  return data.boats.map((boat) => {
    const piles = pileUp(boat.dots.map((value) => toPixels(value, scale, width)), dot);
    const tallest = Math.max(...piles.map((pile) => pile.dots.length));
    const head = top + space / 2;
    const base = top + space + tallest * dot + 2;
    top = base + 18;
    return { head, base, piles };
  });
}

/** Gathers rising positions into piles one dot wide, each centred on what it holds (Wilkinson 1999, dot plots). */
export function pileUp(positions: number[], dot: number): Pile[] {
  const piles: Pile[] = [];
  for (const position of positions) {
    const pile = piles.at(-1);
    const first = pile?.dots[0];
    if (pile && first !== undefined && position - first < dot) {
      pile.dots.push(position);
      pile.center = (first + position) / 2;
    } else {
      piles.push({ center: position, dots: [position] });
    }
  }
  return piles;
}

function toValue(pixels: number, scale: Scale, width: number): number {
  return scale.min + (pixels / width) * (scale.max - scale.min);
}

function dotPlaces(strip: Strip, dot: number, scale: Scale, width: number): [number, number][] {
  return strip.piles.flatMap((pile) =>
    pile.dots.map((_, level): [number, number] => [toValue(pile.center, scale, width), strip.base - 2 - dot * (level + 0.5)]),
  );
}

function stripSeries(boat: Boat, index: number, strip: Strip, dot: number, scale: Scale, room: Room): object[] {
  const width = Math.max(60, room.width - LEFT - RIGHT);
  const { ink, paper, line, series } = room.palette;
  const common = { emphasis: { disabled: true }, silent: true };
  return [
    {
      id: `base-${index}`,
      type: 'line',
      ...common,
      symbol: 'none',
      lineStyle: { color: line, width: 2 },
      data: [[scale.min, strip.base], [scale.max, strip.base]],
    },
    {
      id: `dots-${index}`,
      type: 'scatter',
      ...common,
      symbolSize: dot,
      itemStyle: { color: series[0], borderColor: paper, borderWidth: 1, opacity: 1 },
      data: dotPlaces(strip, dot, scale, width),
    },
    {
      id: `middle-${index}`,
      type: 'scatter',
      ...common,
      symbol: 'diamond',
      symbolSize: 13,
      z: 5,
      itemStyle: { color: ink, borderColor: paper, borderWidth: 2, opacity: 1 },
      data: [[boat.middle.value, strip.base]],
    },
    heading(boat, index, strip, scale, room),
  ];
}

function heading(boat: Boat, index: number, strip: Strip, scale: Scale, room: Room): object {
  const { ink, muted, paper } = room.palette;
  const space = room.width - LEFT - 10;
  const beside = room.narrow ? 0 : space * 0.45;
  const name = shorten(boat.name, space - beside, 14, room.measure);
  const left = room.narrow ? space : space - room.measure(name, 14) - 20;
  const rest = shorten(`${boat.middle.label} · ${boat.words}`, left, TEXT, room.measure);
  const rich = {
    name: { color: ink, fontWeight: 600, fontSize: 14, lineHeight: LINE },
    rest: { color: muted, fontSize: TEXT, lineHeight: LINE },
  };
  const label = {
    show: true,
    position: 'right',
    distance: 0,
    backgroundColor: paper,
    padding: [2, 4, 2, 0],
    formatter: `{name|${name}}${room.narrow ? '\n' : '  '}{rest|${rest}}`,
    lineHeight: LINE,
    rich,
  };
  const mark = { value: [scale.min, strip.head], symbolSize: 1, itemStyle: { color: 'transparent', opacity: 1 }, label };
  return { id: `heading-${index}`, type: 'scatter', silent: true, data: [mark] };
}

function stopsOf(boat: Boat, strip: Strip, dot: number, scale: Scale, width: number): Stop[] {
  const count = boat.dots.length;
  return dotPlaces(strip, dot, scale, width).map((at, index): Stop => {
    const above = count - index - 1;
    const value = tick(Math.round(boat.dots[index] ?? 0));
    const text = `${boat.name}: could cost ${value}\n${above} of ${count} futures cost more\n${boat.words}`;
    return { text, at, grid: 'main', boat: boat.id };
  });
}
