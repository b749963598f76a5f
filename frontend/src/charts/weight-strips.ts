import type { Draw, Room, Stop } from '../kit/drawing';
import { decal, fillAt, type Fill } from '../kit/pattern';
import { lane, LOWER_LANE, numberAxis, planRows, slip, wordMark, type Rows } from '../kit/rows';
import { shorten, tick } from '../kit/text';
import type { WeightStrip, WeightStripsData } from '../model';

type Segment = WeightStrip['segments'][number];

/** A name cut shorter than this says nothing. */
const LEAST_NAME = 60;

const SCALE = { min: 0, max: 100, interval: 25 };

/** Who would lead at every weight of each criterion, and where the weight stands now. */
export const weightStrips: Draw<WeightStripsData> = (data, room) => {
  const rows = planRows(room, { names: data.strips.map((strip) => strip.criterion), right: 18, bottom: 44, below: 16 });
  const most = Math.max(...data.strips.map((strip) => strip.segments.length));
  return {
    height: rows.height,
    stops: data.strips.flatMap((strip, row) => stopsOf(strip, row, data)),
    legend: [
      ...data.winners.map(({ name, id }) => ({ label: `${name} leads`, fill: winnerFill(data, id, room) })),
      { label: 'weight now', fill: { color: room.palette.ink, pattern: 'plain' }, shape: 'line' },
    ],
    option: {
      grid: [rows.grid],
      xAxis: [{ id: 'weight', gridId: 'main', ...(numberAxis(room, SCALE, tick, '% of the whole weight') as object) }],
      yAxis: [rows.yAxis, rows.lanes],
      series: [
        ...Array.from({ length: most }, (_, part) => partSeries(data, part, room, rows)),
        nowMarks(data, room, rows),
        distances(data, room, rows),
      ],
    },
  };
};

function winnerFill(data: WeightStripsData, id: string, room: Room): Fill {
  return fillAt(room.palette, data.winners.findIndex((winner) => winner.id === id));
}

function winnerName(data: WeightStripsData, id: string): string {
  return data.winners.find((winner) => winner.id === id)?.name ?? id;
}

/** The n-th segment of every strip; strips with fewer have nothing there. */
function partSeries(data: WeightStripsData, part: number, room: Room, rows: Rows): object {
  return {
    id: `part-${part}`,
    type: 'bar',
    stack: 'strip',
    barWidth: rows.barHeight,
    emphasis: { disabled: true },
    data: data.strips.map((strip) => {
      const segment = strip.segments[part];
      if (!segment) {
        return { value: 0 };
      }
      const value = segment.toPercent - segment.fromPercent;
      const fill = winnerFill(data, segment.winnerId, room);
      const name = winnerName(data, segment.winnerId);
      const spot = nameSpot(strip, segment, rows.width);
      return {
        value,
        itemStyle: { color: fill.color, borderColor: room.palette.paper, borderWidth: 2, decal: decal(fill.pattern) },
        label: {
          show: spot.width > LEAST_NAME,
          ...slip(room, { position: spot.position, distance: 6, formatter: shorten(name, spot.width, 12, room.measure) }),
        },
      };
    }),
  };
}

/** Where the name has most room inside its segment without touching the mark of the present weight. */
function nameSpot(strip: WeightStrip, segment: Segment, plot: number): { position: string; width: number } {
  const { fromPercent: from, toPercent: to } = segment;
  const now = Math.min(to, Math.max(from, strip.now.value));
  const right = to - now >= now - from;
  return {
    position: right ? 'insideRight' : 'insideLeft',
    width: (Math.max(to - now, now - from) / 100) * plot - 26,
  };
}

function nowMarks(data: WeightStripsData, room: Room, rows: Rows): object {
  return {
    id: 'now',
    type: 'scatter',
    symbol: 'rect',
    symbolSize: [8, rows.barHeight + (room.narrow ? 2 : 10)],
    z: 5,
    silent: true,
    itemStyle: { color: room.palette.ink, borderColor: room.palette.paper, borderWidth: 2, opacity: 1 },
    data: data.strips.map((strip, row) => [strip.now.value, row]),
  };
}

function distances(data: WeightStripsData, room: Room, rows: Rows): object {
  const look = { position: 'right', distance: 0, color: room.palette.muted, fontSize: 12 };
  return {
    id: 'distances',
    type: 'scatter',
    yAxisId: 'main-lanes',
    silent: true,
    data: data.strips.map((strip, row) => {
      const words = shorten(`now ${strip.now.label}: ${strip.nextBorder}`, rows.width + 10, 12, room.measure);
      return wordMark([0, lane(row, LOWER_LANE)], { ...look, formatter: words });
    }),
  };
}

function stopsOf(strip: WeightStrip, row: number, data: WeightStripsData): Stop[] {
  return strip.segments.map((segment, part): Stop => {
    const range = `from ${tick(Math.round(segment.fromPercent))} to ${tick(Math.round(segment.toPercent))} %`;
    return {
      text: `${strip.criterion}, now ${strip.now.label}\n${winnerName(data, segment.winnerId)} leads ${range}\n${strip.nextBorder}`,
      mark: `part-${part}/${row}`,
      at: [(segment.fromPercent + segment.toPercent) / 2, row],
      grid: 'main',
    };
  });
}
