import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import examples from '../gallery/examples.json';
import { cartDrawing } from '../src/charts/cart-drawing';
import { chanceGrid } from '../src/charts/chance-grid';
import { costBuild } from '../src/charts/cost-build';
import { costDots, pileUp } from '../src/charts/cost-dots';
import { costValue, tradeOffEnds } from '../src/charts/cost-value';
import { rankShares } from '../src/charts/rank-shares';
import { tornado } from '../src/charts/tornado';
import { valueBars } from '../src/charts/value-bars';
import { weightStrips } from '../src/charts/weight-strips';
import type { Drawing } from '../src/kit/drawing';
import { legendMarkup } from '../src/kit/legend';
import type {
  CartDrawingData,
  ChanceGridData,
  CostBuildData,
  CostDotsData,
  CostValueData,
  RankSharesData,
  TornadoData,
  ValueBarsData,
  WeightStripsData,
} from '../src/model';
import { roomOf } from './room';

const bars = examples['kw-value-bars'] as ValueBarsData;
const plane = examples['kw-cost-value'] as CostValueData;
const cart = examples['kw-cart-drawing'] as CartDrawingData;

interface Series {
  id: string;
  data: (number | { value: number | number[]; label?: { show?: boolean; formatter?: string } })[];
}

function seriesOf(drawing: Drawing): Map<string, Series> {
  const all = (drawing.option?.['series'] ?? []) as Series[];
  return new Map(all.map((series) => [series.id, series]));
}

function valueAt(series: Series | undefined, index: number): number {
  const item = series?.data[index];
  const value = typeof item === 'object' ? item.value : item;
  return Array.isArray(value) ? (value[0] ?? 0) : (value ?? 0);
}

describe('value bars', () => {
  it('stack the families up to the total', () => {
    const series = seriesOf(valueBars(bars, roomOf(700)));
    const sum = ['MONEY', 'CONDITION', 'WATER', 'LAND'].reduce((total, id) => total + valueAt(series.get(id), 0), 0);
    assert.equal(sum, bars.bars[0]?.total.value);
  });
  it('give a ruled-out boat one grey bar and its reason', () => {
    const { stops, ...drawing } = valueBars(bars, roomOf(700));
    const series = seriesOf({ ...drawing, stops });
    assert.equal(valueAt(series.get('MONEY'), 5), 0);
    assert.equal(valueAt(series.get('ruled-out'), 5), bars.bars[5]?.total.value);
    assert.match(stops.filter((stop) => stop.boat === 'b6').map((stop) => stop.text).join(), /hull number does not match/);
  });
  it('split into criteria on demand', () => {
    const series = seriesOf(valueBars(bars, roomOf(700, true)));
    assert.equal(valueAt(series.get('CONDITION-drive condition'), 0), 8);
    assert.ok(!series.has('CONDITION'));
  });
  it('offer no switch where there is nothing more to see', () => {
    const plain = { ...bars, bars: bars.bars.map((bar) => ({ ...bar, pieces: bar.pieces.map((piece) => ({ ...piece, details: [] })) })) };
    assert.equal(valueBars(plain, roomOf(700)).detailSwitch, undefined);
  });
});

describe('cost against value', () => {
  const leader = plane.points[0]!;
  const scales = { x: { min: 2000, max: 7000, interval: 1000 }, y: { min: 30, max: 70, interval: 10 } };

  it('draws the trade-off line with its slope through the leader', () => {
    const [from, to] = tradeOffEnds(leader, 60, scales);
    const slope = (to![0]! - from![0]!) / (to![1]! - from![1]!);
    assert.ok(Math.abs(slope - 60) < 1e-9);
    assert.ok(Math.abs(from![0]! + (leader.value.value - from![1]!) * 60 - leader.cost.value) < 1e-9);
  });
  it('keeps that line inside the plane', () => {
    for (const rate of [5, 60, 900]) {
      for (const [cost, value] of tradeOffEnds(leader, rate, scales)) {
        assert.ok(cost! >= 2000 && cost! <= 7000 && value! >= 30 - 1e-9 && value! <= 70 + 1e-9);
      }
    }
  });
  it('leads the frontier from cheap to dear without the dominated boats', () => {
    const frontier = seriesOf(costValue(plane, roomOf(700))).get('frontier');
    assert.deepEqual(frontier?.data as unknown, [[2700, 38], [3250, 52], [3890, 60]]);
  });
  it('does without leader, spread and trade-off', () => {
    const bare = plane.points.map((point) => ({ ...point, standing: 'DOMINATED' as const, costSpread: null, valueSpread: null }));
    const series = seriesOf(costValue({ ...plane, points: bare, tradeOff: null }, roomOf(700)));
    assert.deepEqual([...series.keys()].sort(), ['frontier', 'points']);
  });
});

describe('cost build-up', () => {
  it('adds the groups and the resale up to what remains', () => {
    const data = examples['kw-cost-build'] as CostBuildData;
    const series = seriesOf(costBuild(data, roomOf(700)));
    const parts = [...data.groups.map((_, group) => `group-${group}`), 'resale'];
    const sum = parts.reduce((total, id) => total + valueAt(series.get(id), 1), 0);
    assert.equal(sum, data.boats[1]?.net.value);
  });
});

describe('cost dots', () => {
  it('pile up what lies within one dot', () => {
    const piles = pileUp([0, 3, 9, 10, 40], 10);
    assert.deepEqual(piles.map((pile) => pile.dots.length), [3, 1, 1]);
    assert.equal(piles[0]?.center, 4.5);
  });
  it('lose no dot', () => {
    const data = examples['kw-cost-dots'] as CostDotsData;
    const series = seriesOf(costDots(data, roomOf(300)));
    data.boats.forEach((boat, index) => assert.equal(series.get(`dots-${index}`)?.data.length, boat.dots.length));
  });
});

describe('tornado', () => {
  it('splits each swing at zero and at the present lead', () => {
    const series = seriesOf(tornado(examples['kw-tornado'] as TornadoData, roomOf(700)));
    const at = (row: number): number[] => ['space', 'lost', 'less', 'more'].map((id) => valueAt(series.get(id), row));
    assert.deepEqual(at(0), [0, -2.5, 6, 5]);
    assert.deepEqual(at(4).map((value) => Math.round(value * 10) / 10), [4.4, 0, 1.6, 1.1]);
  });
});

describe('weight strips', () => {
  it('cover each strip from end to end', () => {
    const data = examples['kw-weight-strips'] as WeightStripsData;
    const series = seriesOf(weightStrips(data, roomOf(700)));
    data.strips.forEach((_, row) => {
      const sum = [0, 1, 2].reduce((total, part) => total + valueAt(series.get(`part-${part}`), row), 0);
      assert.equal(sum, 100);
    });
  });
});

describe('rank shares', () => {
  it('shade from strong to faint for any number of places', () => {
    const boat = { id: 'a', name: 'A', firstLabel: 'first in 40 of 100' };
    for (const shares of [[100], [40, 60], [40, 20, 10, 10, 5, 5, 5, 5]]) {
      const { legend } = rankShares({ summary: 's', boats: [{ ...boat, sharesPercent: shares }] } as RankSharesData, roomOf(700));
      assert.equal(legend.length, shares.length);
      assert.equal(legend[0]?.fill.color, '#0b4a63');
    }
  });
});

describe('cart drawing', () => {
  it('draws all boats to one scale', () => {
    const hulls = (cartDrawing(cart, roomOf(900)).svg ?? '').match(/rotate\([^)]*\)" d="M0 [^C]*C[^ ]* [^ ]* [^ ]* [^ ]* ([\d.]+)/g) ?? [];
    const lengths = hulls.map((hull) => Number(hull.split(' ').at(-1)));
    assert.equal(lengths.length, 3);
    assert.ok(Math.abs(lengths[1]! / lengths[0]! - 5.05 / 3.66) < 1e-9);
  });
  it('turns a force round when it holds instead of lifts', () => {
    const scene = cart.scenes[0]!;
    const shaft = (hand: number): number[] => {
      const forces = { ...scene.forces, hand: { value: hand, label: 'x' } };
      const svg = cartDrawing({ ...cart, scenes: [{ ...scene, slope: { angleRad: 0, label: 'level' }, forces }] }, roomOf(900)).svg ?? '';
      const [, from, to] = /in the hand"[^>]*><path d="M[\d.]+ ([\d.]+)L[\d.]+ ([\d.]+)/.exec(svg) ?? [];
      return [Number(from), Number(to)];
    };
    const [up, down] = [shaft(200), shaft(-200)];
    assert.ok(up[1]! < up[0]!);
    assert.ok(down[1]! > down[0]!);
  });
});

describe('names from people', () => {
  const hostile = '<img src=x onerror=alert(1)>';

  it('stay words in our own drawings', () => {
    const scenes = cart.scenes.map((scene) => ({ ...scene, name: hostile, verdict: hostile }));
    assert.doesNotMatch(cartDrawing({ ...cart, scenes }, roomOf(900)).svg ?? '', /<img/);
    const grid = examples['kw-chance-grid'] as ChanceGridData;
    const panels = grid.panels.map((panel) => ({ ...panel, title: hostile }));
    assert.doesNotMatch(chanceGrid({ ...grid, panels }, roomOf(900)).svg ?? '', /<img/);
  });
  it('stay words in the key', () => {
    const { palette } = roomOf(700);
    assert.doesNotMatch(legendMarkup([{ label: hostile, fill: { color: 'red', pattern: 'plain' } }], palette), /<img/);
  });
});
