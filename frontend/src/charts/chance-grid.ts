import type { Draw, Room, Stop } from '../kit/drawing';
import { svgPattern, type Fill } from '../kit/pattern';
import { TEXT } from '../kit/rows';
import { escape, wrap } from '../kit/text';
import type { ChanceGridData, ChanceTone } from '../model';

type Panel = ChanceGridData['panels'][number];

interface Place {
  left: number;
  top: number;
  width: number;
}

const ACROSS = 10;
const CELL = 17;
const PITCH = 20;
const GRID = ACROSS * PITCH;
const HEAD = 28;
const LINE = 24;

/** One hundred cells a panel, grouped by outcome, with the counts beside them. */
export const chanceGrid: Draw<ChanceGridData> = (data, room) => {
  const columns = Math.min(data.panels.length, Math.max(1, Math.floor(room.width / 290)));
  const width = room.width / columns;
  const heights = data.panels.map((panel) => panelHeight(panel, width, room));
  const tallest = Math.max(...heights) + 18;
  const places = data.panels.map((_, index) => ({
    left: (index % columns) * width,
    top: Math.floor(index / columns) * tallest,
    width,
  }));
  const height = Math.ceil(data.panels.length / columns) * tallest;
  const drawn = data.panels.map((panel, index) => panelMarkup(panel, places[index]!, room)).join('');
  return {
    height,
    stops: data.panels.flatMap((panel, index) => stopsOf(panel, places[index]!)),
    legend: [],
    nearest: true,
    svg: `<svg width="${room.width}" height="${height}" font-family="${escape(room.palette.font)}" aria-hidden="true">${patterns(room)}${drawn}</svg>`,
  };
};

const TONES: ChanceTone[] = ['FINE', 'MINOR', 'MAJOR', 'STOP'];

function fillOf(tone: ChanceTone, room: Room): Fill {
  const { wash, series, ink } = room.palette;
  switch (tone) {
    case 'FINE':
      return { color: wash, pattern: 'plain' };
    case 'MINOR':
      return { color: series[0], pattern: 'dots' };
    case 'MAJOR':
      return { color: series[1], pattern: 'slash' };
    case 'STOP':
      return { color: ink, pattern: 'plain' };
  }
}

function patterns(room: Room): string {
  return `<defs>${TONES.map((tone) => svgPattern(`tone-${tone}`, fillOf(tone, room))).join('')}</defs>`;
}

function cell(x: number, y: number, tone: ChanceTone, room: Room): string {
  const edge = tone === 'FINE' ? room.palette.neutral : room.palette.ink;
  return `<rect x="${x + 0.5}" y="${y + 0.5}" width="${CELL}" height="${CELL}" rx="4" fill="url(#tone-${tone})" stroke="${edge}"/>`;
}

/** Beside the cells where the panel is wide enough, else below them. */
function keyPlace({ left, top, width }: Place): { x: number; y: number; space: number } {
  const beside = width >= GRID + 200;
  return beside
    ? { x: left + GRID + 18, y: top + HEAD, space: width - GRID - 78 }
    : { x: left, y: top + HEAD + GRID + 10, space: width - 60 };
}

function panelHeight(panel: Panel, width: number, room: Room): number {
  const place = { left: 0, top: 0, width };
  const key = keyPlace(place);
  const lines = panel.groups.flatMap((group) => wrap(group.words, key.space, TEXT, room.measure)).length;
  return Math.max(HEAD + GRID, key.y + lines * LINE);
}

function panelMarkup(panel: Panel, place: Place, room: Room): string {
  const tones = panel.groups.flatMap((group) => Array<ChanceTone>(group.cells).fill(group.tone));
  const cells = tones.map((tone, index) => {
    const x = place.left + (index % ACROSS) * PITCH;
    const y = place.top + HEAD + Math.floor(index / ACROSS) * PITCH;
    return cell(x, y, tone, room);
  });
  const title = `<text x="${place.left}" y="${place.top + 16}" font-size="14" font-weight="600" fill="${room.palette.ink}">${escape(panel.title)}</text>`;
  return title + cells.join('') + keyMarkup(panel, place, room);
}

function keyMarkup(panel: Panel, place: Place, room: Room): string {
  const key = keyPlace(place);
  let line = 0;
  return panel.groups
    .map((group) => {
      const y = key.y + line * LINE;
      const words = wrap(group.words, key.space, TEXT, room.measure);
      line += words.length;
      const text = words.map((each, index) => `<tspan x="${key.x + 54}" y="${y + 13 + index * LINE}">${escape(each)}</tspan>`);
      const style = `font-size="${TEXT}" fill="${room.palette.ink}"`;
      const count = `<text x="${key.x + 48}" y="${y + 13}" text-anchor="end" font-weight="600" ${style}>${group.cells}</text>`;
      return `${cell(key.x, y, group.tone, room)}${count}<text ${style}>${text.join('')}</text>`;
    })
    .join('');
}

function stopsOf(panel: Panel, place: Place): Stop[] {
  let start = 0;
  return panel.groups.map((group): Stop => {
    const middle = start + Math.max(0, Math.floor((group.cells - 1) / 2));
    start += group.cells;
    const x = place.left + (middle % ACROSS) * PITCH + CELL / 2;
    const y = place.top + HEAD + Math.floor(Math.min(middle, 99) / ACROSS) * PITCH + CELL / 2;
    return { text: `${panel.title}\n${group.words}: ${group.cells} of 100`, at: [x, y] };
  });
}
