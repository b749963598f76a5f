import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import examples from '../gallery/examples.json';
import { DRAWS } from '../src/charts/all';
import type { Summed } from '../src/model';
import { roomOf } from './room';

const WIDTHS = [300, 358, 700, 1400];

function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') {
    return [value];
  }
  return value !== null && typeof value === 'object' ? Object.values(value).flatMap(numbersIn) : [];
}

describe('every drawing', () => {
  it('has an example, and every example a drawing', () => {
    assert.deepEqual(Object.keys(examples).sort(), DRAWS.map(([name]) => name).sort());
  });

  for (const [name, draw] of DRAWS) {
    const data = (examples as unknown as Record<string, Summed>)[name]!;

    for (const width of WIDTHS) {
      it(`${name} holds only finite numbers at ${width} pixels`, () => {
        const drawing = draw(data, roomOf(width));
        assert.ok(drawing.height > 0);
        assert.ok(numbersIn(drawing).every(Number.isFinite));
        assert.doesNotMatch(drawing.svg ?? '', /NaN|undefined|Infinity/);
      });
    }

    it(`${name} says something at every stop`, () => {
      const { stops } = draw(data, roomOf(700));
      assert.ok(stops.length > 0);
      assert.ok(stops.every((stop) => stop.text.trim() !== '' && !/undefined|null|NaN/.test(stop.text)));
    });

    it(`${name} points every stop at a mark of its own`, () => {
      const { option, stops } = draw(data, roomOf(700));
      const series = (option?.['series'] ?? []) as { id: string; data: unknown[] }[];
      const marks = new Set(series.flatMap((each) => each.data.map((_, index) => `${each.id}/${index}`)));
      const pointed = stops.flatMap((stop) => stop.mark ?? []);
      assert.deepEqual(pointed.filter((mark) => option && !marks.has(mark)), []);
      assert.equal(new Set(pointed).size, pointed.length);
    });

    it(`${name} names each series once`, () => {
      const series = (draw(data, roomOf(700)).option?.['series'] ?? []) as { id: string }[];
      assert.equal(new Set(series.map(({ id }) => id)).size, series.length);
    });
  }
});
