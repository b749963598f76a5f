import type { Draw } from '../kit/drawing';
import type { Summed } from '../model';
import { costBuild } from './cost-build';
import { costValue } from './cost-value';
import { valueBars } from './value-bars';

/** Every drawing under its element name. */
export const CHARTS = {
  'kw-value-bars': valueBars,
  'kw-cost-value': costValue,
  'kw-cost-build': costBuild,
} satisfies Record<string, unknown>;

/** The same, for code that treats all alike. */
export const DRAWS = Object.entries(CHARTS) as unknown as [name: string, draw: Draw<Summed>][];
