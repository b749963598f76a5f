import type { Draw, Room } from '../kit/drawing';
import { decal } from '../kit/pattern';
import { numberAxis, planRows, scaleFor, wordMark, type Rows } from '../kit/rows';
import { shorten, tick } from '../kit/text';
import type { DifferenceBarData, Figure } from '../model';
import { FAMILIES, FAMILY_WORDS, familyFill } from './value-bars';

/** Why one boat is ahead: what speaks for it to the right, what speaks for the other to the left, and the sum. */
export const differenceBar: Draw<DifferenceBarData> = (data, room) => {
  const figures = [...data.rows.map((row) => row.difference), data.sum];
  const names = [...data.rows.map((row) => row.criterion), 'together'];
  const rows = planRows(room, { names, right: 30, left: 24, bottom: 62 });
  const scale = paddedScale(figures, room, rows);
  const families = FAMILIES.filter((family) => data.rows.some((row) => row.family === family));
  return {
    height: rows.height,
    stops: figures.map((figure, index) => ({
      text: `${names[index]}: ${figure.label} ${data.axis}\n${speaksFor(figure, data)}`,
      mark: `difference/${index}`,
      at: [figure.value / 2, index],
      grid: 'main',
    })),
    legend: families.map((family) => ({ label: FAMILY_WORDS[family], fill: familyFill(room, family) })),
    option: {
      grid: [rows.grid],
      xAxis: [{ id: 'points', gridId: 'main', ...(numberAxis(room, scale, tick, axisWords(data, room)) as object) }],
      yAxis: [rows.yAxis, rows.lanes],
      series: [bars(data, figures, room, rows), zeroLine(names.length, room), labels(figures, room)],
    },
  };
};

function paddedScale(figures: Figure[], room: Room, rows: Rows): ReturnType<typeof scaleFor> {
  const values = figures.map((figure) => figure.value);
  const [low, high] = [Math.min(0, ...values), Math.max(0, ...values)];
  const widest = Math.max(...figures.map((figure) => room.measure(figure.label, 13)));
  const pad = ((high - low) * (widest + 8)) / rows.width;
  return scaleFor(low < 0 ? low - pad : low, high + pad, rows.width);
}

function speaksFor(figure: Figure, data: DifferenceBarData): string {
  if (figure.value === 0) {
    return 'speaks for neither';
  }
  return `speaks for ${figure.value > 0 ? data.better : data.other}`;
}

function axisWords(data: DifferenceBarData, room: Room): string {
  const half = (room.width - room.measure(`←   ${data.axis}   →`, 12)) / 2 - 10;
  return `← ${shorten(data.other, half, 12, room.measure)}   ${data.axis}   ${shorten(data.better, half, 12, room.measure)} →`;
}

function bars(data: DifferenceBarData, figures: Figure[], room: Room, rows: Rows): object {
  const { ink, paper } = room.palette;
  return {
    id: 'difference',
    type: 'bar',
    barWidth: rows.barHeight - 4,
    emphasis: { disabled: true },
    data: figures.map((figure, index) => {
      const row = data.rows[index];
      const fill = row ? familyFill(room, row.family) : { color: ink, pattern: 'plain' as const };
      return {
        value: figure.value,
        itemStyle: { color: fill.color, borderColor: paper, borderWidth: 1, decal: decal(fill.pattern) },
      };
    }),
  };
}

function zeroLine(count: number, room: Room): object {
  return {
    id: 'zero',
    type: 'line',
    symbol: 'none',
    silent: true,
    lineStyle: { color: room.palette.ink, width: 1.5 },
    data: Array.from({ length: count }, (_, index) => [0, index]),
  };
}

function labels(figures: Figure[], room: Room): object {
  const look = { color: room.palette.ink, fontSize: 13 };
  return {
    id: 'labels',
    type: 'scatter',
    silent: true,
    data: figures.map((figure, index) =>
      wordMark([figure.value, index], {
        ...look,
        formatter: figure.label,
        position: figure.value < 0 ? 'left' : 'right',
        fontWeight: index === figures.length - 1 ? 600 : 400,
      }),
    ),
  };
}
