import type { Answer, Answers, Boat } from './model';

/** The answers, kept in the browser's own storage under the sheet's mark. */
export class Keeping {
  readonly #key: string;
  #state: Record<string, Answers> = {};
  #works = true;
  readonly #listeners: (() => void)[] = [];

  constructor(sheet: string) {
    this.#key = 'keelweigh-field-' + sheet;
    try {
      this.#state = JSON.parse(localStorage.getItem(this.#key) ?? '{}') ?? {};
    } catch {
      this.#works = false;
    }
  }

  /** Whether the browser keeps anything for this file; some do not. */
  get works(): boolean {
    return this.#works;
  }

  /** Has a function called after every change. */
  onChange(listener: () => void): void {
    this.#listeners.push(listener);
  }

  answers(boat: Boat): Answers {
    return this.#state[boat.id] ?? {};
  }

  answer(boat: Boat, check: string): Readonly<Answer> {
    return this.answers(boat)[check] ?? {};
  }

  change(boat: Boat, check: string, changed: Answer): void {
    const answers = (this.#state[boat.id] ??= {});
    answers[check] = { ...answers[check], ...changed };
    this.#keep();
  }

  takeAway(boat: Boat, check: string): void {
    delete this.#state[boat.id]?.[check];
    this.#keep();
  }

  #keep(): void {
    try {
      localStorage.setItem(this.#key, JSON.stringify(this.#state));
    } catch {
      this.#works = false;
    }
    this.#listeners.forEach((listener) => listener());
  }
}
