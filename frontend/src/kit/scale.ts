/** An axis range with round ends and steps. */
export interface Scale {
  min: number;
  max: number;
  interval: number;
}

const STEPS = [1, 2, 2.5, 5, 10];

/** Widens a range to round numbers with about as many steps as fit. */
export function niceScale(low: number, high: number, steps: number): Scale {
  const span = high > low ? high - low : Math.max(Math.abs(high), 1);
  const raw = span / Math.max(1, steps);
  const power = 10 ** Math.floor(Math.log10(raw));
  const interval = (STEPS.find((step) => step * power >= raw * 0.999) ?? 10) * power;
  const min = Math.floor(low / interval + 1e-9) * interval;
  const max = Math.max(Math.ceil(high / interval - 1e-9) * interval, min + interval);
  return { min, max, interval };
}

/** Pixels of a value on a scale drawn over a length. */
export function toPixels(value: number, scale: Scale, length: number): number {
  return ((value - scale.min) / (scale.max - scale.min)) * length;
}
