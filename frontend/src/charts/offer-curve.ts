import type { Draw, LegendEntry, Room, Stop } from '../kit/drawing';
import { labelAt, placeLabels } from '../kit/place';
import { numberAxis, scaleFor, slip, TEXT } from '../kit/rows';
import { toPixels, type Scale } from '../kit/scale';
import { shorten, tick } from '../kit/text';
import type { OfferCurveData, OfferMark } from '../model';

const CHANCE = { min: 0, max: 100, interval: 25 };
const LEFT = 40;
const RIGHT = 26;
const TOP = 28;

const SHAPES: Record<OfferMark, { symbol: string; key: NonNullable<LegendEntry['shape']> }> = {
  OPENING: { symbol: 'circle', key: 'dot' },
  FAIR: { symbol: 'diamond', key: 'diamond' },
  WALK_AWAY: { symbol: 'rect', key: 'square' },
  ASKING: { symbol: 'triangle', key: 'triangle' },
};

/** The chance that this boat is the best choice, as its price rises; the prices to know stand on the curve. */
export const offerCurve: Draw<OfferCurveData> = (data, room) => {
  const width = Math.max(60, room.width - LEFT - RIGHT);
  const height = room.narrow ? 240 : 280;
  const prices = [...data.points, ...data.marks].map((each) => each.price.value);
  const scale = scaleFor(Math.min(...prices), Math.max(...prices), width);
  return {
    height: TOP + height + 58,
    stops: stops(data),
    legend: legend(data, room),
    nearest: true,
    option: {
      grid: [{ id: 'main', left: LEFT, top: TOP, width, height, outerBoundsMode: 'none' }],
      xAxis: [{ id: 'price', gridId: 'main', ...(numberAxis(room, scale, tick, data.axis) as object) }],
      yAxis: [chanceAxis(room)],
      series: [
        curve(data, room),
        level('even', [[scale.min, 50], [scale.max, 50]], room),
        ...data.marks.map((mark, index) => level(`drop-${index}`, [[mark.price.value, 0], [mark.price.value, mark.chancePercent]], room)),
        marks(data, room, scale, width, height),
      ],
    },
  };
};

function chanceAxis(room: Room): object {
  const axis = numberAxis(room, CHANCE, tick);
  const name = shorten('best in … of 100 futures', room.width - 10, 12, room.measure);
  return {
    id: 'chance',
    gridId: 'main',
    ...axis,
    name,
    nameLocation: 'end',
    nameGap: 12,
    nameTextStyle: { color: room.palette.muted, fontSize: 12, align: 'left', padding: [0, 0, 0, 6 - LEFT] },
  };
}

function curve(data: OfferCurveData, room: Room): object {
  const color = room.palette.series[0];
  return {
    id: 'curve',
    type: 'line',
    symbol: 'none',
    silent: true,
    emphasis: { disabled: true },
    lineStyle: { color, width: 3 },
    areaStyle: { color, opacity: room.palette.dark ? 0.25 : 0.1 },
    data: data.points.map((point) => [point.price.value, point.chancePercent]),
  };
}

function level(id: string, data: number[][], room: Room): object {
  const lineStyle = { color: room.palette.muted, width: 1.2, type: [4, 4] };
  return { id, type: 'line', symbol: 'none', silent: true, emphasis: { disabled: true }, lineStyle, data };
}

function marks(data: OfferCurveData, room: Room, scale: Scale, width: number, height: number): object {
  const words = data.marks.map((mark) => `${mark.words} ${mark.price.label}`);
  const wide = (text: string): number => room.measure(text, TEXT) + 10;
  const places = placeLabels(
    data.marks.map((mark, index) => ({
      x: toPixels(mark.price.value, scale, width),
      y: height - toPixels(mark.chancePercent, CHANCE, height),
      widths: [wide(words[index] ?? ''), wide(mark.price.label)],
      height: 20,
      radius: 8,
    })),
    { x: 0, y: -10, width: width + RIGHT - 4, height: height + 10 },
  );
  return {
    id: 'marks',
    type: 'scatter',
    z: 5,
    emphasis: { disabled: true },
    itemStyle: { color: room.palette.ink, borderColor: room.palette.paper, borderWidth: 2, opacity: 1 },
    data: data.marks.map((mark, index) => {
      const place = places[index];
      const full = words[index] ?? '';
      const text = place && place.width < wide(full) ? mark.price.label : full;
      const label = place ? slip(room, { show: true, ...labelAt(place.side, 16), formatter: text, fontSize: TEXT }) : { show: false };
      return { value: [mark.price.value, mark.chancePercent], symbol: SHAPES[mark.kind].symbol, symbolSize: 16, label };
    }),
  };
}

function legend(data: OfferCurveData, room: Room): LegendEntry[] {
  return data.marks.map((mark) => ({
    label: `${mark.words} ${mark.price.label}`,
    fill: { color: room.palette.ink, pattern: 'plain' },
    shape: SHAPES[mark.kind].key,
  }));
}

function stops(data: OfferCurveData): Stop[] {
  const on = (words: string, price: { value: number; label: string }, chance: number): Stop => ({
    text: `${words}${price.label}\nBest in ${tick(Math.round(chance))} of 100 futures`,
    at: [price.value, chance],
    grid: 'main',
  });
  return [
    ...data.marks.map((mark) => on(`${mark.words} `, mark.price, mark.chancePercent)),
    ...data.points.map((point) => on('', point.price, point.chancePercent)),
  ].sort((one, other) => one.at[0] - other.at[0]);
}
