import type { Draw, LegendEntry, Room, Stop } from '../kit/drawing';
import { numberAxis, slip, TEXT, wordMark } from '../kit/rows';
import { niceScale, type Scale } from '../kit/scale';
import { shorten, tick } from '../kit/text';
import type { CostFanData, CostFanYear } from '../model';
import { couldBe } from './cost-value';

type Boat = CostFanData['boats'][number];

interface Cell {
  id: string;
  left: number;
  top: number;
  width: number;
  height: number;
}

const HEAD = 34;
const FOOT = 44;
const LEFT = 52;

/** What has been paid by each year: the middle as a line, eight futures in ten as a band; one small picture a boat. */
export const costFan: Draw<CostFanData> = (data, room) => {
  const columns = Math.min(data.boats.length, Math.max(1, Math.floor(room.width / 300)));
  const cells = data.boats.map((_, index) => cellAt(index, columns, room));
  const last = cells.at(-1);
  const scale = scaleOf(data);
  return {
    height: last ? last.top + last.height + FOOT : 0,
    stops: data.boats.flatMap((boat, index) => boat.years.map((year) => stopOf(boat, year, `fan-${index}`))),
    legend: legend(room),
    nearest: true,
    selectable: true,
    option: {
      grid: cells.map(({ id, left, top, width, height }) => ({ id, left, top, width, height, outerBoundsMode: 'none' })),
      xAxis: data.boats.map((boat, index) => yearAxis(boat, cells[index]!, room)),
      yAxis: data.boats.map((boat, index) => moneyAxis(boat, cells[index]!, scale, room)),
      series: data.boats.flatMap((boat, index) => fan(boat, cells[index]!, room)),
    },
  };
};

function cellAt(index: number, columns: number, room: Room): Cell {
  const width = room.width / columns;
  const height = 150;
  return {
    id: `fan-${index}`,
    left: (index % columns) * width + LEFT,
    top: Math.floor(index / columns) * (height + HEAD + FOOT) + HEAD,
    width: width - LEFT - 20,
    height,
  };
}

function scaleOf(data: CostFanData): Scale {
  const spreads = data.boats.flatMap((boat) => boat.years.map((year) => year.spread));
  return niceScale(
    Math.min(0, ...spreads.map((spread) => spread.low.value)),
    Math.max(...spreads.map((spread) => spread.high.value)),
    4,
  );
}

function yearAxis(boat: Boat, cell: Cell, room: Room): object {
  const years = boat.years.map((year) => year.year);
  const scale = { min: Math.min(...years), max: Math.max(...years), interval: 1 };
  const axis = numberAxis(room, scale, (year) => (year === 0 ? 'bought' : tick(year)), 'years owned');
  return { id: `${cell.id}-years`, gridId: cell.id, ...axis, splitLine: { show: false } };
}

/** The boat's name stands where the axis has its title. */
function moneyAxis(boat: Boat, cell: Cell, scale: Scale, room: Room): object {
  return {
    id: `${cell.id}-money`,
    gridId: cell.id,
    ...numberAxis(room, scale, tick),
    name: shorten(boat.name, cell.width + LEFT - 10, 14, room.measure),
    nameLocation: 'end',
    nameGap: 14,
    nameTextStyle: { color: room.palette.ink, fontWeight: 600, fontSize: 14, align: 'left', padding: [0, 0, 0, 6 - LEFT] },
  };
}

function fan(boat: Boat, cell: Cell, room: Room): object[] {
  const axes = { xAxisId: `${cell.id}-years`, yAxisId: `${cell.id}-money` };
  const line = { type: 'line', ...axes, symbol: 'none', silent: true, emphasis: { disabled: true } };
  const band = { ...line, stack: cell.id, stackStrategy: 'all', lineStyle: { width: 1, color: room.palette.series[0], opacity: 0.7 } };
  const at = (pick: (year: CostFanYear) => number): number[][] => boat.years.map((year) => [year.year, pick(year)]);
  return [
    { ...band, id: `${cell.id}-low`, data: at((year) => year.spread.low.value) },
    {
      ...band,
      id: `${cell.id}-band`,
      areaStyle: { color: room.palette.series[0], opacity: room.palette.dark ? 0.4 : 0.22 },
      data: at((year) => year.spread.high.value - year.spread.low.value),
    },
    {
      ...line,
      id: `${cell.id}-middle`,
      z: 4,
      lineStyle: { width: 2.5, color: room.palette.ink },
      data: at((year) => year.spread.middle.value),
    },
    endLabel(boat, axes, cell, room),
  ];
}

function endLabel(boat: Boat, axes: object, cell: Cell, room: Room): object {
  const end = boat.years.at(-1);
  const look = slip(room, { position: [4, 8], align: 'right', verticalAlign: 'top', fontWeight: 600, fontSize: TEXT });
  return {
    id: `${cell.id}-end`,
    type: 'scatter',
    ...axes,
    silent: true,
    z: 5,
    data: end ? [wordMark([end.year, end.spread.low.value], { ...look, formatter: end.spread.middle.label })] : [],
  };
}

function legend(room: Room): LegendEntry[] {
  const { ink, series } = room.palette;
  return [
    { label: 'as likely above as below', fill: { color: ink, pattern: 'plain' }, shape: 'line' },
    { label: 'could be, 8 times in 10', fill: { color: series[0], pattern: 'plain' }, shape: 'band' },
  ];
}

function stopOf(boat: Boat, { year, spread }: CostFanYear, grid: string): Stop {
  const when = year === 0 ? 'when bought' : `after ${tick(year)} ${year === 1 ? 'year' : 'years'}`;
  const text = `${boat.name}, ${when}\nPaid so far: ${spread.middle.label}${couldBe(spread)}`;
  return { text, at: [year, spread.middle.value], grid, boat: boat.id };
}
