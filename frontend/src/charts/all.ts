import type { Draw } from '../kit/drawing';
import type { Summed } from '../model';
import { cartDrawing } from './cart-drawing';
import { chanceGrid } from './chance-grid';
import { costBuild } from './cost-build';
import { costDots } from './cost-dots';
import { costFan } from './cost-fan';
import { costValue } from './cost-value';
import { differenceBar } from './difference-bar';
import { offerCurve } from './offer-curve';
import { rankShares } from './rank-shares';
import { tornado } from './tornado';
import { valueBars } from './value-bars';
import { weightStrips } from './weight-strips';

/** Every drawing under its element name. Each takes the data of its own kind. */
const CHARTS = {
  'kw-value-bars': valueBars,
  'kw-cost-value': costValue,
  'kw-cost-build': costBuild,
  'kw-cart-drawing': cartDrawing,
  'kw-weight-strips': weightStrips,
  'kw-difference-bar': differenceBar,
  'kw-rank-shares': rankShares,
  'kw-cost-fan': costFan,
  'kw-offer-curve': offerCurve,
  'kw-tornado': tornado,
  'kw-chance-grid': chanceGrid,
  'kw-cost-dots': costDots,
};

/** The same, for code that treats all alike. */
export const DRAWS = Object.entries(CHARTS) as unknown as [name: string, draw: Draw<Summed>][];
