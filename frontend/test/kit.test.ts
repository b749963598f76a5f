import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { brightness } from '../src/kit/palette';
import { decal, fillAt } from '../src/kit/pattern';
import { placeLabels } from '../src/kit/place';
import { niceScale, toPixels } from '../src/kit/scale';
import { escape, shorten, tick, wrap } from '../src/kit/text';
import { roomOf } from './room';

const measure = (text: string): number => text.length * 10;

describe('text', () => {
  it('leaves a text that fits', () => assert.equal(shorten('Green', 50, 12, measure), 'Green'));
  it('cuts a longer one with an ellipsis', () => assert.equal(shorten('Green kayak', 60, 12, measure), 'Green…'));
  it('keeps at least a letter', () => assert.equal(shorten('Green', 5, 12, measure), 'G…'));
  it('breaks lines between words', () => assert.deepEqual(wrap('one two three', 70, 12, measure), ['one two', 'three']));
  it('makes markup harmless', () => assert.equal(escape('<b a="1">&'), '&lt;b a=&quot;1&quot;&gt;&amp;'));
  it('writes a minus sign and groups', () => assert.equal(tick(-12500), '−12,500'));
});

describe('scale', () => {
  it('ends on round numbers around the range', () => assert.deepEqual(niceScale(-650, 5960, 7), { min: -1000, max: 6000, interval: 1000 }));
  it('keeps an end that is round already', () => assert.deepEqual(niceScale(0, 100, 5), { min: 0, max: 100, interval: 20 }));
  it('survives a range without extent', () => {
    const { min, max } = niceScale(40, 40, 5);
    assert.ok(min <= 40 && max > 40);
  });
  it('maps its ends to the ends of the length', () => {
    const scale = { min: -50, max: 50, interval: 10 };
    assert.deepEqual([-50, 0, 50].map((value) => toPixels(value, scale, 200)), [0, 100, 200]);
  });
});

describe('labels beside points', () => {
  const plane = { x: 0, y: 0, width: 300, height: 200 };
  const point = (x: number, y: number) => ({ x, y, widths: [80, 40], height: 16, radius: 6 });

  it('stand to the upper right where nothing is in the way', () =>
    assert.deepEqual(placeLabels([point(100, 100)], plane), [{ side: 'upper-right', width: 80 }]));
  it('turn shorter or to the other side at the edge', () => {
    const [place] = placeLabels([point(250, 100)], plane);
    assert.deepEqual(place, { side: 'upper-right', width: 40 });
  });
  it('never cover another mark', () => {
    const places = placeLabels([point(100, 100), point(130, 92)], plane);
    assert.notEqual(places[0]?.side, 'upper-right');
  });
  it('give up where no corner is free', () =>
    assert.deepEqual(placeLabels([point(5, 5)], { x: 0, y: 0, width: 20, height: 20 }), [null]));
});

describe('looks', () => {
  it('differ in hue or pattern for eight groups', () => {
    const { palette } = roomOf(400);
    const looks = Array.from({ length: 8 }, (_, index) => JSON.stringify(fillAt(palette, index)));
    assert.equal(new Set(looks).size, 8);
  });
  it('give every pattern but the plain one a decal', () => {
    assert.equal(decal('plain'), null);
    assert.ok((['slash', 'dots', 'bars', 'back', 'lines', 'peaks', 'grid'] as const).every((each) => decal(each) !== null));
  });
  it('tell light from dark', () => {
    assert.equal(brightness('rgb(255, 255, 255)'), 1);
    assert.equal(brightness('rgb(0, 0, 0)'), 0);
  });
});
