import type { Draw, Room, Stop } from '../kit/drawing';
import { lane, numberAxis, planRows, slip, UPPER_LANE, wordMark, type Rows } from '../kit/rows';
import { tick } from '../kit/text';
import type { RankSharesData } from '../model';

const SCALE = { min: 0, max: 100, interval: 25 };
const PLACES = ['first', 'second', 'third', 'fourth', 'fifth'];

/** How often each boat comes first, second and so on: one hue, strong for first, faint for last. */
export const rankShares: Draw<RankSharesData> = (data, room) => {
  const words = Math.ceil(Math.max(...data.boats.map((boat) => room.measure(boat.firstLabel, 14)))) + 14;
  const rows = planRows(room, {
    names: data.boats.map((boat) => boat.name),
    right: room.narrow ? 14 : words,
    bottom: 44,
    besideName: words,
  });
  const places = data.boats[0]?.sharesPercent.length ?? 0;
  const numbers = Array.from({ length: places }, (_, place) => place);
  return {
    height: rows.height,
    stops: data.boats.flatMap((boat, row) => stopsOf(boat, row)),
    legend: numbers.map((place) => ({ label: placeWords(place), fill: { color: shade(room, place, places), pattern: 'plain' } })),
    selectable: true,
    option: {
      grid: [rows.grid],
      xAxis: [{ id: 'share', gridId: 'main', ...(numberAxis(room, SCALE, tick, 'futures out of 100') as object) }],
      yAxis: [rows.yAxis, rows.lanes],
      series: [...numbers.map((place) => placeSeries(data, place, places, room, rows)), firstLabels(data, room)],
    },
  };
};

function placeWords(place: number): string {
  return PLACES[place] ?? `${place + 1}th`;
}

/** Steps through the whole range of the hue, whatever the number of places. */
function shade(room: Room, place: number, places: number): string {
  const { depth } = room.palette;
  const last = depth.length - 1;
  return depth[places < 2 ? 0 : Math.round((place / (places - 1)) * last)] ?? depth[last] ?? depth[0];
}

function placeSeries(data: RankSharesData, place: number, places: number, room: Room, rows: Rows): object {
  return {
    id: `place-${place}`,
    type: 'bar',
    stack: 'shares',
    barWidth: rows.barHeight,
    emphasis: { disabled: true },
    itemStyle: { color: shade(room, place, places), borderColor: room.palette.paper, borderWidth: 2 },
    data: data.boats.map((boat) => {
      const value = boat.sharesPercent[place] ?? 0;
      const text = tick(Math.round(value));
      const fits = (value / 100) * rows.width > room.measure(text, 12) + 18;
      return { value, label: fits ? slip(room, { show: true, position: 'inside', formatter: text }) : { show: false } };
    }),
  };
}

function firstLabels(data: RankSharesData, room: Room): object {
  const look = { color: room.palette.ink, fontSize: 13, fontWeight: 600, position: room.narrow ? 'left' : 'right' };
  return {
    id: 'first-labels',
    type: 'scatter',
    silent: true,
    ...(room.narrow ? { yAxisId: 'main-lanes' } : {}),
    data: data.boats.map((boat, row) =>
      wordMark([100, room.narrow ? lane(row, UPPER_LANE) : row], { ...look, formatter: boat.firstLabel }),
    ),
  };
}

function stopsOf(boat: RankSharesData['boats'][number], row: number): Stop[] {
  let start = 0;
  return boat.sharesPercent.map((share, place): Stop => {
    const middle = start + share / 2;
    start += share;
    return {
      text: `${boat.name}\n${placeWords(place)} in ${tick(Math.round(share))} of 100 futures`,
      mark: `place-${place}/${row}`,
      at: [middle, row],
      grid: 'main',
      boat: boat.id,
    };
  });
}
