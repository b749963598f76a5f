import type { Draw, Drawing, LegendEntry, Room, Stop } from '../kit/drawing';
import { decal, fillAt, type Fill } from '../kit/pattern';
import { numberAxis, planRows, slip, wordMark, type Rows } from '../kit/rows';
import { shorten, tick } from '../kit/text';
import type { Family, ValueBar, ValueBarsData, ValuePiece } from '../model';

export const FAMILIES: Family[] = ['MONEY', 'CONDITION', 'WATER', 'LAND'];

export const FAMILY_WORDS: Record<Family, string> = {
  MONEY: 'money',
  CONDITION: 'condition',
  WATER: 'on the water',
  LAND: 'on land',
};

export function familyFill(room: Room, family: Family): Fill {
  return fillAt(room.palette, FAMILIES.indexOf(family));
}

interface Segment {
  key: string;
  family: Family;
  words: string;
  /** Points per bar, null where the bar has no such piece. */
  points: ({ value: number; label: string } | null)[];
  lines: string[][];
}

const SCALE = { min: 0, max: 100, interval: 20 };

/** A bar per boat, in pieces that add up to its value of 0 to 100 points. */
export const valueBars: Draw<ValueBarsData> = (data, room) => {
  const rows = planRows(room, { names: data.bars.map((bar) => bar.name), right: totalsWidth(data, room), bottom: 44 });
  const segments = room.detail ? byCriterion(data.bars) : byFamily(data.bars);
  return {
    height: rows.height,
    stops: data.bars.flatMap((bar, index) => stopsOf(bar, index, segments)),
    legend: legend(room),
    selectable: true,
    ...detailSwitch(data),
    option: {
      grid: [rows.grid],
      xAxis: [{ id: 'points', gridId: 'main', ...(numberAxis(room, SCALE, tick, 'points out of 100') as object) }],
      yAxis: [rows.yAxis],
      series: [...segments.map((segment) => segmentSeries(segment, room, rows)), ruledOut(data, room, rows), totals(data, room)],
    },
  };
};

function detailSwitch(data: ValueBarsData): Partial<Drawing> {
  const detailed = data.bars.some((bar) => bar.pieces.some((piece) => piece.details.length > 1));
  return detailed ? { detailSwitch: 'Every criterion' } : {};
}

function legend(room: Room): LegendEntry[] {
  return FAMILIES.map((family) => ({ label: FAMILY_WORDS[family], fill: familyFill(room, family) }));
}

function totalsWidth(data: ValueBarsData, room: Room): number {
  return Math.ceil(Math.max(0, ...data.bars.map((bar) => room.measure(bar.total.label, 14)))) + 14;
}

function byFamily(bars: ValueBar[]): Segment[] {
  return FAMILIES.map((family) => {
    const pieces = bars.map((bar) => counted(bar).find((piece) => piece.family === family));
    return {
      key: family,
      family,
      words: FAMILY_WORDS[family],
      points: pieces.map((piece) => piece?.points ?? null),
      lines: pieces.map((piece) => (piece?.details ?? []).map((each) => `${each.criterion}: ${each.points.label}`)),
    };
  });
}

function byCriterion(bars: ValueBar[]): Segment[] {
  return FAMILIES.flatMap((family) => {
    const details = bars.map((bar) => counted(bar).find((piece) => piece.family === family)?.details ?? []);
    const criteria = [...new Set(details.flat().map((each) => each.criterion))];
    return criteria.map((criterion) => ({
      key: `${family}-${criterion}`,
      family,
      words: criterion,
      points: details.map((each) => each.find((detail) => detail.criterion === criterion)?.points ?? null),
      lines: details.map(() => [FAMILY_WORDS[family]]),
    }));
  });
}

function counted(bar: ValueBar): ValuePiece[] {
  return bar.ruledOut === null ? bar.pieces : [];
}

function segmentSeries(segment: Segment, room: Room, rows: Rows): object {
  const fill = familyFill(room, segment.family);
  return {
    id: segment.key,
    type: 'bar',
    stack: 'value',
    barWidth: rows.barHeight,
    emphasis: { disabled: true },
    itemStyle: { color: fill.color, borderColor: room.palette.paper, borderWidth: 2, decal: decal(fill.pattern) },
    data: segment.points.map((points) => {
      const value = points?.value ?? 0;
      const text = tick(Math.round(value));
      const fits = (value / 100) * rows.width > room.measure(text, 12) + 18;
      return { value, label: fits ? slip(room, { show: true, position: 'inside', formatter: text }) : { show: false } };
    }),
  };
}

function ruledOut(data: ValueBarsData, room: Room, rows: Rows): object {
  const { neutral, paper } = room.palette;
  return {
    id: 'ruled-out',
    type: 'bar',
    stack: 'value',
    barWidth: rows.barHeight,
    emphasis: { disabled: true },
    itemStyle: { color: neutral, borderColor: paper, borderWidth: 2, decal: decal('slash') },
    data: data.bars.map((bar) => {
      if (bar.ruledOut === null) {
        return { value: 0 };
      }
      const words = shorten(`Ruled out: ${bar.ruledOut}`, rows.width - 20, 12, room.measure);
      const label = slip(room, { show: true, position: 'insideLeft', distance: 6, formatter: words });
      return { value: bar.total.value, label };
    }),
  };
}

function totals(data: ValueBarsData, room: Room): object {
  const look = { position: 'right', color: room.palette.ink, fontWeight: 600, fontSize: 14 };
  return {
    id: 'totals',
    type: 'scatter',
    silent: true,
    data: data.bars.map((bar, index) =>
      wordMark([bar.total.value, index], { ...look, show: bar.ruledOut === null, formatter: bar.total.label }),
    ),
  };
}

function stopsOf(bar: ValueBar, index: number, segments: Segment[]): Stop[] {
  const grid = 'main';
  if (bar.ruledOut !== null) {
    const text = `${bar.name}\nRuled out: ${bar.ruledOut}\nIt would have ${bar.total.label}`;
    return [{ text, mark: `ruled-out/${index}`, at: [bar.total.value / 2, index], grid, boat: bar.id }];
  }
  let start = 0;
  return segments.flatMap((segment) => {
    const points = segment.points[index];
    if (!points) {
      return [];
    }
    const middle = start + points.value / 2;
    start += points.value;
    const text = [`${bar.name}: ${bar.total.label}`, `${segment.words}: ${points.label}`, ...(segment.lines[index] ?? [])].join('\n');
    return [{ text, mark: `${segment.key}/${index}`, at: [middle, index] as [number, number], grid, boat: bar.id }];
  });
}
