import { made, OUTCOMES, type Answers, type Boat } from './model';

const DIGITS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const FORM = 1;
const HEAD_BYTES = 5;
const BITS_A_CHECK = 3;
const BITS_A_DIGIT = 5;
const GROUP = 5;

/** Writes the outcomes on a boat as `report.FieldCode` reads them: the form, the boat's tag, three bits a check, a check sum. */
export function fieldCode(boat: Boat, answers: Answers): string {
  const checks = made(boat, answers);
  const last = Math.max(-1, ...checks.map((check) => check.place));
  const bytes = new Array<number>(HEAD_BYTES + Math.ceil(((last + 1) * BITS_A_CHECK) / 8)).fill(0);
  bytes[0] = FORM;
  for (let i = 0; i < 4; i++) {
    bytes[i + 1] = parseInt(boat.tag.slice(2 * i, 2 * i + 2), 16);
  }
  for (const check of checks) {
    const value = OUTCOMES.indexOf(answers[check.id]!.outcome!) + 1;
    putBits(bytes, HEAD_BYTES * 8 + check.place * BITS_A_CHECK, value);
  }
  const sum = checkSum(bytes);
  return digits([...bytes, sum >> 8, sum & 0xff]);
}

/** CRC-16/CCITT-FALSE: polynomial 0x1021, start 0xFFFF. */
export function checkSum(bytes: readonly number[]): number {
  return bytes.reduce((before, byte) => {
    let sum = before ^ (byte << 8);
    for (let bit = 0; bit < 8; bit++) {
      sum = (sum & 0x8000 ? (sum << 1) ^ 0x1021 : sum << 1) & 0xffff;
    }
    return sum;
  }, 0xffff);
}

function putBits(bytes: number[], at: number, value: number): void {
  for (let i = 0; i < BITS_A_CHECK; i++) {
    if ((value >> (BITS_A_CHECK - 1 - i)) & 1) {
      bytes[(at + i) >> 3]! |= 0x80 >> ((at + i) & 7);
    }
  }
}

function digits(bytes: readonly number[]): string {
  const bit = (at: number): number => ((bytes[at >> 3] ?? 0) >> (7 - (at & 7))) & 1;
  const count = Math.ceil((bytes.length * 8) / BITS_A_DIGIT);
  return Array.from({ length: count }, (_, digit) => {
    let value = 0;
    for (let at = digit * BITS_A_DIGIT; at < (digit + 1) * BITS_A_DIGIT; at++) {
      value = (value << 1) | bit(at);
    }
    return (digit > 0 && digit % GROUP === 0 ? '-' : '') + DIGITS[value];
  }).join('');
}
