import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import encodeQR from 'qr';
import { decodeQR } from 'qr/decode.js';
import { fitted, read, sort } from '../src/scan/reading';
import { SAID, whyNoCamera } from '../src/scan/sentences';
import { checkSum, fieldCode } from '../src/sheet/code';
import type { Answers, Boat, Outcome } from '../src/sheet/model';
import { modules, path, QUIET_MODULES } from '../src/sheet/picture';

const CHECKS = 45;

function boat(tag = '8f00c3a1'): Boat {
  const checks = Array.from({ length: CHECKS }, (_, place) => ({
    id: `check-${place}`, place, zone: 'Hull', title: '', todo: '', tools: '', minutes: 1, waiting: 0, ifFitted: false, fine: '', grades: [],
  }));
  return { id: 'a', name: 'Green', what: '', version: 3, tag, checks };
}

function answers(...outcomes: [place: number, outcome: Outcome][]): Answers {
  return Object.fromEntries(outcomes.map(([place, outcome]) => [`check-${place}`, { outcome }]));
}

const EVERYTHING = answers(...Array.from({ length: CHECKS }, (_, place) => [place, place % 2 ? 'stop' : 'not-fitted'] as [number, Outcome]));

/** Draws modules as a camera sees them: grey on grey, `scale` pixels each, in a larger frame. */
function photo(rows: boolean[][], scale: number, dark = 60, light = 200): ImageData {
  const margin = 20;
  const side = rows.length * scale + 2 * margin;
  const data = new Uint8ClampedArray(side * side * 4).fill(255);
  for (let y = 0; y < side; y++) {
    for (let x = 0; x < side; x++) {
      const isDark = rows[Math.floor((y - margin) / scale)]?.[Math.floor((x - margin) / scale)] ?? false;
      data.fill(isDark ? dark : light, (y * side + x) * 4, (y * side + x) * 4 + 3);
    }
  }
  return { width: side, height: side, data, colorSpace: 'srgb' } as ImageData;
}

describe('the code of a field sheet', () => {
  // The check value that Greg Cook's catalogue of parametrised CRC algorithms gives CRC-16/IBM-3740, also called CCITT-FALSE.
  it('has the published check sum', () => assert.equal(checkSum([...'123456789'].map((each) => each.charCodeAt(0))), 0x29b1));
  it('names form, tag, outcomes and check sum', () => {
    // 00000001, 8F00C3A1, three bits each: 010 000 101 and seven unused, then the check sum; worked by hand.
    const head = [0x01, 0x8f, 0x00, 0xc3, 0xa1, 0b01000010, 0b10000000];
    const sum = checkSum(head);
    const bits = [...head, sum >> 8, sum & 255].map((byte) => byte.toString(2).padStart(8, '0')).join('').padEnd(75, '0');
    const digits = bits.match(/.{5}/g)!.map((five) => '0123456789ABCDEFGHJKMNPQRSTVWXYZ'[parseInt(five, 2)]).join('');
    assert.equal(fieldCode(boat(), answers([0, 'minor'], [2, 'not-fitted'])), digits.match(/.{5}/g)!.join('-'));
  });
  it('ends with the last check that was made', () =>
    assert.ok(fieldCode(boat(), answers([1, 'fine'])).length < fieldCode(boat(), answers([40, 'fine'])).length));
  it('leaves out checks with a note only', () =>
    assert.equal(fieldCode(boat(), { 'check-3': { note: 'look again' } }), fieldCode(boat(), {})));
});

describe('its picture', () => {
  for (const [name, given] of [['one result', answers([0, 'fine'])], ['all results', EVERYTHING]] as const) {
    it(`is read back with ${name}`, () => {
      const code = fieldCode(boat(), given);
      assert.deepEqual(read(photo(modules(code), 5), 200), { kind: 'code', code });
    });
  }
  // Characters that fit at level M in alphanumeric mode, by the table of capacities in ISO/IEC 18004 (symbol versions 3 and 4).
  for (const [characters, version] of [[61, 3], [62, 4], [90, 4], [91, 5]] as const) {
    it(`is of version ${version} for ${characters} characters`, () =>
      assert.equal(modules('A'.repeat(characters)).length, 17 + 4 * version + 2 * QUIET_MODULES));
  }
  it('says in itself that it is of level M', () => {
    // ISO/IEC 18004, format information: level M is 00, which the mask 101010000010010 turns into 10, first bits of row 8.
    const row = modules(fieldCode(boat(), EVERYTHING))[8 + QUIET_MODULES]!;
    assert.deepEqual(row.slice(QUIET_MODULES, QUIET_MODULES + 2), [true, false]);
  });
  it('keeps four modules white all round', () => {
    const rows = modules(fieldCode(boat(), EVERYTHING));
    const edge = (at: number): boolean => at < QUIET_MODULES || at >= rows.length - QUIET_MODULES;
    assert.equal(rows.some((row, y) => row.some((dark, x) => dark && (edge(x) || edge(y)))), false);
    assert.ok(rows[QUIET_MODULES]![QUIET_MODULES]);
  });
  it('is drawn as one bar for each run of dark modules', () =>
    assert.equal(path([[true, true, false, true], [false, false, false, false], [false, true, true, true]]), 'M0 0h2v1H0zM3 0h1v1H3zM1 2h3v1H1z'));
});

describe('a scanned picture', () => {
  it('without a code holds none', () => assert.deepEqual(read(photo([[false]], 200), 20), { kind: 'none' }));
  it('with another text is of another kind', () =>
    assert.deepEqual(read(photo(encodeQR('https://example.org/', 'raw', { border: 4 }), 5), 200), { kind: 'other' }));
  it('is read when it is dirty in a corner', () => {
    const code = fieldCode(boat(), EVERYTHING);
    const rows = modules(code);
    for (let y = 26; y < 30; y++) {
      rows[y]!.fill(true, 26, 30);
    }
    assert.equal(decodeQR(photo(rows, 6)), code);
  });
  for (const [text, kind] of [
    ['05RG1-GX140', 'other'],
    ['05RG1-GX140-12', 'code'],
    ['05RG1-GX140-1U', 'other'],
    ['05RG1GX140AA12', 'other'],
    ['05rg1-gx140-12', 'other'],
    ['05RG1-'.repeat(66) + '1', 'code'],
    ['05RG1-'.repeat(70) + '1', 'other'],
    ['<img src=x onerror=alert(1)>', 'other'],
  ] as const) {
    it(`sorts ${text.slice(0, 30)} as ${kind}`, () => assert.equal(sort(text).kind, kind));
  }
  it('is made smaller, never larger', () => {
    assert.deepEqual(fitted(4000, 3000, 1024), { width: 1024, height: 768 });
    assert.deepEqual(fitted(300, 200, 1024), { width: 300, height: 200 });
    assert.deepEqual(fitted(100000, 1, 1024), { width: 1024, height: 1 });
  });
});

describe('a camera that does not open', () => {
  const named = (name: string): Error => Object.assign(new Error(), { name });
  for (const [name, sentence] of [
    ['NotAllowedError', SAID.refused],
    ['NotFoundError', SAID.noCamera],
    ['OverconstrainedError', SAID.noCamera],
    ['NotReadableError', SAID.busy],
    ['TypeError', SAID.busy],
  ] as const) {
    it(`says so for ${name}`, () => assert.equal(whyNoCamera(named(name)), sentence));
  }
  it('always offers another way', () =>
    [SAID.insecure, SAID.noCamera, SAID.refused, SAID.busy, SAID.none].forEach((each) => assert.match(each, /type (it|the code)\./)));
});
