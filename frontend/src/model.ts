// What the server hands to each chart: the Java records of org.keelweigh.ui.chart, field for field.

export type Family = 'MONEY' | 'CONDITION' | 'WATER' | 'LAND';

/** A number to draw, and how it reads with its unit. */
export interface Figure {
  value: number;
  label: string;
}

/** Where a figure could end up: one in ten below `low`, half below `middle`, one in ten above `high`. */
export interface Spread {
  low: Figure;
  middle: Figure;
  high: Figure;
}

export interface Summed {
  summary: string;
}

export interface ValueBarsData extends Summed {
  bars: ValueBar[];
}

export interface ValueBar {
  id: string;
  name: string;
  total: Figure;
  pieces: ValuePiece[];
  ruledOut: string | null;
}

export interface ValuePiece {
  family: Family;
  points: Figure;
  details: { criterion: string; points: Figure }[];
}

export type Standing = 'LEADER' | 'FRONTIER' | 'DOMINATED' | 'RULED_OUT';

export interface CostValueData extends Summed {
  costAxis: string;
  valueAxis: string;
  points: CostValuePoint[];
  tradeOff: { costPerPoint: number; label: string } | null;
}

export interface CostValuePoint {
  id: string;
  name: string;
  cost: Figure;
  value: Figure;
  standing: Standing;
  costSpread: Spread | null;
  valueSpread: Spread | null;
}

export interface CostBuildData extends Summed {
  axis: string;
  groups: string[];
  boats: CostBuildBoat[];
}

export interface CostBuildBoat {
  id: string;
  name: string;
  amounts: Figure[];
  resale: Figure;
  net: Figure;
  spread: Spread | null;
}

export interface CartDrawingData extends Summed {
  scenes: CartScene[];
}

export interface CartScene {
  id: string;
  name: string;
  verdict: string;
  hull: { lengthM: number; heightM: number; lengthLabel: string };
  axle: { fromSternM: number; wheelRadiusM: number; label: string };
  hand: { fromSternM: number; aboveAxleM: number };
  centre: { fromSternM: number; aboveAxleM: number };
  slope: { angleRad: number; label: string };
  forces: { weight: Figure; wheels: Figure; hand: Figure; pull: Figure };
}

export interface WeightStripsData extends Summed {
  winners: { id: string; name: string }[];
  strips: WeightStrip[];
}

export interface WeightStrip {
  criterion: string;
  now: Figure;
  segments: { fromPercent: number; toPercent: number; winnerId: string }[];
  nextBorder: string;
}

export interface DifferenceBarData extends Summed {
  better: string;
  other: string;
  axis: string;
  rows: { criterion: string; family: Family; difference: Figure }[];
  sum: Figure;
}

export interface RankSharesData extends Summed {
  boats: { id: string; name: string; sharesPercent: number[]; firstLabel: string }[];
}

export interface CostFanData extends Summed {
  axis: string;
  boats: { id: string; name: string; years: CostFanYear[] }[];
}

export interface CostFanYear {
  year: number;
  spread: Spread;
}

export type OfferMark = 'OPENING' | 'FAIR' | 'WALK_AWAY' | 'ASKING';

export interface OfferCurveData extends Summed {
  axis: string;
  points: { price: Figure; chancePercent: number }[];
  marks: { kind: OfferMark; words: string; price: Figure; chancePercent: number }[];
}

export interface TornadoData extends Summed {
  axis: string;
  now: Figure;
  bars: TornadoBar[];
}

export interface TornadoBar {
  factor: string;
  low: Figure;
  lowMeans: string;
  high: Figure;
  highMeans: string;
  flip: string | null;
}

export type ChanceTone = 'FINE' | 'MINOR' | 'MAJOR' | 'STOP';

export interface ChanceGridData extends Summed {
  panels: { title: string; groups: { words: string; cells: number; tone: ChanceTone }[] }[];
}

export interface CostDotsData extends Summed {
  axis: string;
  boats: { id: string; name: string; dots: number[]; middle: Figure; words: string }[];
}
