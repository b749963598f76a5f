/** What the page writes into the sheet's block of data (`report.FieldSheet`). */
export interface Sheet {
  /** The sheet's mark: those of its boats, joined. */
  readonly sheet: string;
  readonly boats: readonly Boat[];
}

export interface Boat {
  readonly id: string;
  readonly name: string;
  readonly what: string;
  readonly version: number;
  /** Eight hexadecimal digits that stand for the boat, its state and the catalogue. */
  readonly tag: string;
  readonly checks: readonly Check[];
}

export interface Check {
  readonly id: string;
  /** Its place in the catalogue, which the code follows. */
  readonly place: number;
  readonly zone: string;
  readonly title: string;
  readonly todo: string;
  readonly tools: string;
  readonly minutes: number;
  readonly waiting: number;
  readonly caution?: string | null;
  readonly ifFitted: boolean;
  /** What the field for a reading is called, with its unit; none where nothing is measured. */
  readonly measured?: string | null;
  readonly fine: string;
  readonly grades: readonly Grade[];
  readonly known?: { readonly outcome: string; readonly note?: string | null } | null;
}

export interface Grade {
  readonly outcome: Outcome;
  readonly looks: string;
  readonly fixedBy: string;
  readonly why?: string | null;
  readonly stop?: string | null;
}

/** In the order of their values in a code, which begin at one. */
export const OUTCOMES = ['fine', 'minor', 'major', 'stop', 'not-fitted'] as const;
export type Outcome = (typeof OUTCOMES)[number];

/** What somebody tapped or typed at one check. */
export interface Answer {
  outcome?: Outcome;
  note?: string;
  measured?: number | null;
}

/** Answers by check. */
export type Answers = Record<string, Answer>;

/** Tells the checks that were made: those with an outcome, whatever else was typed. */
export function made(boat: Boat, answers: Answers): Check[] {
  return boat.checks.filter((check) => answers[check.id]?.outcome !== undefined);
}
