import type { Draw, LegendEntry, Room, Stop } from '../kit/drawing';
import { decal, fillAt } from '../kit/pattern';
import { lane, LOWER_LANE, numberAxis, planRows, scaleFor, slip, type Rows } from '../kit/rows';
import { toPixels, type Scale } from '../kit/scale';
import { tick } from '../kit/text';
import type { CostBuildBoat, CostBuildData } from '../model';
import { couldBe } from './cost-value';

/** What each boat takes out of the purse, group by group, what it gives back when sold, and what remains. */
export const costBuild: Draw<CostBuildData> = (data, room) => {
  const rows = planRows(room, { names: data.boats.map((boat) => boat.name), left: 24, right: 22, bottom: 58, below: 14 });
  const scale = scaleFor(Math.min(0, ...data.boats.map(lowest)), Math.max(...data.boats.map(highest)), rows.width);
  return {
    height: rows.height,
    stops: data.boats.flatMap((boat, index) => stopsOf(boat, index, data)),
    legend: legend(data, room),
    selectable: true,
    option: {
      grid: [rows.grid],
      xAxis: [{ id: 'money', gridId: 'main', ...(numberAxis(room, scale, tick, data.axis) as object) }],
      yAxis: [rows.yAxis, rows.lanes],
      series: [
        ...data.groups.map((_, group) => groupSeries(data, group, room, rows)),
        resaleSeries(data, room, rows),
        ...data.boats.flatMap((boat, index) => spreadLine(boat, index, room)),
        netMarks(data, room, rows, scale),
      ],
    },
  };
};

function paid(boat: CostBuildBoat): number {
  return boat.amounts.reduce((sum, amount) => sum + amount.value, 0);
}

function highest(boat: CostBuildBoat): number {
  return Math.max(paid(boat), boat.spread?.high.value ?? 0);
}

function lowest(boat: CostBuildBoat): number {
  return Math.min(boat.resale.value, boat.spread?.low.value ?? 0);
}

function groupSeries(data: CostBuildData, group: number, room: Room, rows: Rows): object {
  const fill = fillAt(room.palette, group);
  return {
    id: `group-${group}`,
    ...bar(rows),
    itemStyle: { color: fill.color, borderColor: room.palette.paper, borderWidth: 2, decal: decal(fill.pattern) },
    data: data.boats.map((boat) => boat.amounts[group]?.value ?? 0),
  };
}

function resaleSeries(data: CostBuildData, room: Room, rows: Rows): object {
  const { neutral, paper } = room.palette;
  return {
    id: 'resale',
    ...bar(rows),
    itemStyle: { color: neutral, borderColor: paper, borderWidth: 2, decal: decal('lines') },
    data: data.boats.map((boat) => boat.resale.value),
  };
}

function bar(rows: Rows): object {
  return { type: 'bar', stack: 'money', barWidth: rows.barHeight, emphasis: { disabled: true } };
}

/** A second line below the bar: where the remaining cost could be, and where it probably is. */
function spreadLine(boat: CostBuildBoat, index: number, room: Room): object[] {
  if (!boat.spread) {
    return [];
  }
  const y = lane(index, LOWER_LANE);
  return [
    {
      id: `spread-${boat.id}`,
      type: 'line',
      yAxisId: 'main-lanes',
      symbol: 'none',
      silent: true,
      emphasis: { disabled: true },
      data: [
        [boat.spread.low.value, y],
        [boat.spread.high.value, y],
      ],
      lineStyle: { color: room.palette.ink, width: 2, cap: 'round' },
    },
  ];
}

function netMarks(data: CostBuildData, room: Room, rows: Rows, scale: Scale): object {
  const { ink, paper } = room.palette;
  return {
    id: 'net',
    type: 'scatter',
    yAxisId: 'main-lanes',
    symbol: 'diamond',
    symbolSize: 14,
    z: 6,
    emphasis: { disabled: true },
    itemStyle: { color: ink, borderColor: paper, borderWidth: 2, opacity: 1 },
    data: data.boats.map((boat, index) => ({
      value: [boat.net.value, lane(index, LOWER_LANE)],
      label: slip(room, { show: true, formatter: boat.net.label, fontWeight: 600, ...netLabel(boat, room, rows, scale) }),
    })),
  };
}

/** Behind the spread line, or before it where the drawing ends. */
function netLabel(boat: CostBuildBoat, room: Room, rows: Rows, scale: Scale): object {
  const at = (value: number): number => toPixels(value, scale, rows.width);
  const net = at(boat.net.value);
  const right = at(boat.spread?.high.value ?? boat.net.value) - net;
  const width = room.measure(boat.net.label, 13) + 8;
  return net + right + width <= rows.width + 18
    ? { position: 'right', distance: Math.max(2, right - 4) }
    : { position: 'left', distance: Math.max(2, net - at(boat.spread?.low.value ?? boat.net.value) - 4) };
}

function legend(data: CostBuildData, room: Room): LegendEntry[] {
  const { neutral, ink } = room.palette;
  return [
    ...data.groups.map((label, group) => ({ label, fill: fillAt(room.palette, group) })),
    { label: 'back when sold', fill: { color: neutral, pattern: 'lines' } },
    { label: 'what remains to pay', fill: { color: ink, pattern: 'plain' }, shape: 'diamond' },
    ...(data.boats.some((boat) => boat.spread)
      ? [{ label: 'could be, 8 times in 10', fill: { color: ink, pattern: 'plain' }, shape: 'line' } as LegendEntry]
      : []),
  ];
}

function stopsOf(boat: CostBuildBoat, index: number, data: CostBuildData): Stop[] {
  let start = 0;
  const common = { grid: 'main', boat: boat.id };
  const groups = boat.amounts.map((amount, group): Stop => {
    const middle = start + amount.value / 2;
    start += amount.value;
    const text = `${boat.name}\n${data.groups[group] ?? ''}: ${amount.label}`;
    return { ...common, text, mark: `group-${group}/${index}`, at: [middle, index] };
  });
  const net = `${boat.name}\nRemains to pay: ${boat.net.label}${couldBe(boat.spread)}`;
  return [
    ...groups,
    {
      ...common,
      text: `${boat.name}\nBack when sold: ${boat.resale.label}`,
      mark: `resale/${index}`,
      at: [boat.resale.value / 2, index],
    },
    { ...common, text: net, mark: `net/${index}`, at: [boat.net.value, index] },
  ];
}
