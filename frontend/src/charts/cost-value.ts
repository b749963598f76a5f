import type { Draw, LegendEntry, Room, Stop } from '../kit/drawing';
import { labelAt, placeLabels, type Placed } from '../kit/place';
import { numberAxis, scaleFor, slip, TEXT } from '../kit/rows';
import { niceScale, toPixels, type Scale } from '../kit/scale';
import { shorten, tick } from '../kit/text';
import type { CostValueData, CostValuePoint, Spread, Standing } from '../model';

const SHAPES: Record<Standing, { symbol: string; size: number; words: string }> = {
  LEADER: { symbol: 'diamond', size: 20, words: 'leads now' },
  FRONTIER: { symbol: 'circle', size: 14, words: 'nothing is both cheaper and better' },
  DOMINATED: { symbol: 'triangle', size: 12, words: 'another boat is cheaper and better' },
  RULED_OUT: { symbol: 'rect', size: 10, words: 'ruled out' },
};

const RIGHT = 24;

interface Plane {
  x: Scale;
  y: Scale;
  left: number;
  top: number;
  width: number;
  height: number;
}

/** Each boat where its cost and its value for everything else put it; up and to the left is better. */
export const costValue: Draw<CostValueData> = (data, room) => {
  const plane = planPlane(data, room);
  const height = plane.top + plane.height + 56;
  return {
    height,
    stops: data.points.map(stopOf),
    legend: legend(data, room),
    selectable: true,
    option: {
      grid: [
        { id: 'main', left: plane.left, top: plane.top, width: plane.width, height: plane.height, outerBoundsMode: 'none' },
      ],
      xAxis: [{ id: 'cost', gridId: 'main', ...(numberAxis(room, plane.x, tick, data.costAxis) as object) }],
      yAxis: [valueAxis(data, room, plane)],
      series: [
        ...whiskers(data, room),
        frontier(data, room),
        ...tradeOff(data, room, plane),
        points(data, room, plane),
      ],
    },
  };
};

function planPlane(data: CostValueData, room: Room): Plane {
  const left = 44;
  const width = Math.max(60, room.width - left - RIGHT);
  const costs = data.points.flatMap(({ cost, costSpread }) => [cost.value, ...ends(costSpread)]);
  const values = data.points.flatMap(({ value, valueSpread }) => [value.value, ...ends(valueSpread)]);
  const pad = (Math.max(...costs) - Math.min(...costs)) * 0.04;
  return {
    left,
    width,
    top: 26,
    height: room.narrow ? 300 : 340,
    x: scaleFor(Math.min(...costs) - pad, Math.max(...costs) + pad, width),
    y: niceScale(Math.max(0, Math.min(...values) - 4), Math.min(100, Math.max(...values) + 4), 5),
  };
}

function ends(spread: Spread | null): number[] {
  return spread ? [spread.low.value, spread.high.value] : [];
}

function valueAxis(data: CostValueData, room: Room, plane: Plane): object {
  const words = shorten(data.valueAxis, room.width - 10, 12, room.measure);
  return {
    id: 'value',
    gridId: 'main',
    ...numberAxis(room, plane.y, tick),
    name: words,
    nameLocation: 'end',
    nameGap: 12,
    nameTextStyle: { color: room.palette.muted, fontSize: 12, align: 'left', padding: [0, 0, 0, -plane.left + 6] },
  };
}

function colourOf(point: CostValuePoint, room: Room): string {
  switch (point.standing) {
    case 'LEADER':
      return room.palette.series[0];
    case 'FRONTIER':
      return room.palette.series[2];
    case 'DOMINATED':
    case 'RULED_OUT':
      return room.palette.neutral;
  }
}

function points(data: CostValueData, room: Room, plane: Plane): object {
  const places = placeLabels(
    data.points.map((point) => ({
      x: toPixels(point.cost.value, plane.x, plane.width),
      y: plane.height - toPixels(point.value.value, plane.y, plane.height),
      widths: labelWidths(point, room),
      height: 20,
      radius: SHAPES[point.standing].size / 2,
    })),
    { x: 0, y: 0, width: plane.width + RIGHT - 4, height: plane.height },
  );
  return {
    id: 'points',
    type: 'scatter',
    z: 4,
    emphasis: { disabled: true },
    data: data.points.map((point, index) => ({
      value: [point.cost.value, point.value.value],
      symbol: SHAPES[point.standing].symbol,
      symbolSize: SHAPES[point.standing].size,
      itemStyle: { color: colourOf(point, room), borderColor: room.palette.paper, borderWidth: 2, opacity: 1 },
      label: nameLabel(places[index] ?? null, point, room),
    })),
  };
}

function labelWidths(point: CostValuePoint, room: Room): number[] {
  const full = Math.min(room.measure(point.name, TEXT) + 10, room.width * 0.45);
  return [full, Math.min(full, 110), Math.min(full, 70)];
}

function nameLabel(place: Placed | null, point: CostValuePoint, room: Room): object {
  if (place === null) {
    return { show: false };
  }
  const muted = point.standing === 'DOMINATED' || point.standing === 'RULED_OUT';
  return slip(room, {
    show: true,
    ...labelAt(place.side, SHAPES[point.standing].size),
    formatter: shorten(point.name, place.width - 8, TEXT, room.measure),
    fontSize: TEXT,
    fontWeight: point.standing === 'LEADER' ? 600 : 400,
    color: muted ? room.palette.muted : room.palette.ink,
  });
}

function line(id: string, data: number[][], style: object, extra: object = {}): object {
  return { id, type: 'line', data, symbol: 'none', silent: true, emphasis: { disabled: true }, lineStyle: style, ...extra };
}

function whiskers(data: CostValueData, room: Room): object[] {
  return data.points.flatMap((point) => {
    const style = { color: room.palette.muted, width: 1.5, opacity: 0.6 };
    const { costSpread: cost, valueSpread: value } = point;
    return [
      ...(cost
        ? [line(`cost-${point.id}`, [[cost.low.value, point.value.value], [cost.high.value, point.value.value]], style)]
        : []),
      ...(value
        ? [line(`value-${point.id}`, [[point.cost.value, value.low.value], [point.cost.value, value.high.value]], style)]
        : []),
    ];
  });
}

function frontier(data: CostValueData, room: Room): object {
  const best = data.points
    .filter(({ standing }) => standing === 'LEADER' || standing === 'FRONTIER')
    .sort((a, b) => a.cost.value - b.cost.value)
    .map(({ cost, value }) => [cost.value, value.value]);
  return line('frontier', best, { color: room.palette.series[2], width: 2 }, { step: 'end', z: 2 });
}

/** The line of equal worth through the leader: boats below it would have to be cheaper to draw level. */
function tradeOff(data: CostValueData, room: Room, plane: Plane): object[] {
  const leader = data.points.find(({ standing }) => standing === 'LEADER');
  if (!leader || !data.tradeOff) {
    return [];
  }
  return [
    line('trade-off', tradeOffEnds(leader, data.tradeOff.costPerPoint, plane), {
      color: room.palette.ink,
      width: 1.5,
      type: [6, 4],
    }),
  ];
}

/** Where a line of the given slope through the leader enters and leaves the plane. */
export function tradeOffEnds(leader: CostValuePoint, costPerPoint: number, plane: Pick<Plane, 'x' | 'y'>): number[][] {
  const costAt = (value: number): number => leader.cost.value + (value - leader.value.value) * costPerPoint;
  const valueAt = (cost: number): number => leader.value.value + (cost - leader.cost.value) / costPerPoint;
  const end = (edgeValue: number, low: number, high: number): number[] => {
    const cost = Math.min(high, Math.max(low, costAt(edgeValue)));
    return [cost, valueAt(cost)];
  };
  return [end(plane.y.min, plane.x.min, plane.x.max), end(plane.y.max, plane.x.min, plane.x.max)];
}

function legend(data: CostValueData, room: Room): LegendEntry[] {
  const { series, ink } = room.palette;
  return [
    { label: 'best you can get at each cost', fill: { color: series[2], pattern: 'plain' }, shape: 'line' },
    ...(data.tradeOff ? [{ label: data.tradeOff.label, fill: { color: ink, pattern: 'plain' }, shape: 'dash' } as LegendEntry] : []),
  ];
}

function stopOf(point: CostValuePoint, index: number): Stop {
  const lines = [
    `${point.name}: ${SHAPES[point.standing].words}`,
    `Costs ${point.cost.label}${couldBe(point.costSpread)}`,
    `Worth ${point.value.label}${couldBe(point.valueSpread)}`,
  ];
  return {
    text: lines.join('\n'),
    mark: `points/${index}`,
    at: [point.cost.value, point.value.value],
    grid: 'main',
    boat: point.id,
  };
}

/** Says a spread as a possibility, so that nobody reads it as two fixed figures. */
export function couldBe(spread: Spread | null): string {
  return spread ? `, could be ${spread.low.label} to ${spread.high.label}` : '';
}
