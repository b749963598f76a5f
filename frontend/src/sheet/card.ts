import type { Keeping } from './keeping';
import { button, make, status } from './make';
import type { Boat, Check, Outcome } from './model';

const WORDS: Record<Outcome, string> = {
  fine: 'Fine',
  minor: 'Minor',
  major: 'Major',
  stop: 'Stop',
  'not-fitted': 'Not fitted',
};
const LONGEST_NOTE = 1000;

/** One check on the page: what to do, what was found, a measure and a note. */
export class Card {
  readonly element = make('article', '', 'card');
  readonly #boat: Boat;
  readonly #check: Check;
  readonly #keeping: Keeping;
  readonly #title: HTMLElement;
  readonly #told = status('stopped');

  /**
   * @param number its place in the walk, from one
   * @param go goes to another check by its index
   */
  constructor(boat: Boat, check: Check, keeping: Keeping, number: number, go: (index: number) => void) {
    this.#boat = boat;
    this.#check = check;
    this.#keeping = keeping;
    this.#title = make('h3', check.title);
    this.#title.tabIndex = -1;
    const set = this.#outcomes();
    const measured = this.#measured();
    const note = this.#note();
    const takeAway = button('Take the result away', () => {
      note.value = '';
      measured.value = '';
      set.querySelectorAll('input').forEach((each) => (each.checked = false));
      keeping.takeAway(boat, check.id);
      this.#tell();
    });
    const row = make('div', '', 'row screen');
    row.append(
      button('Back', () => go(number - 2)),
      button(number === boat.checks.length ? 'To the first check left' : 'Next check', () => go(number), 'main'),
      takeAway,
    );
    this.element.dataset.check = check.id;
    this.element.append(
      ...this.#head(number),
      set,
      this.#told,
      ...(check.measured ? [line(check.measured, measured)] : []),
      line('Note', note),
      make('span', 'Note:', 'blank'),
      row,
    );
    this.#tell();
  }

  focus(): void {
    this.#title.focus();
  }

  #head(number: number): HTMLElement[] {
    const { zone, minutes, waiting, tools, todo, caution, known } = this.#check;
    const time = `${minutes} min${waiting ? ` and ${waiting} min waiting` : ''}`;
    const head = [
      make('p', `${zone} · ${number} of ${this.#boat.checks.length} · ${time} · ${tools}`, 'soft'),
      this.#title,
      make('p', todo),
    ];
    if (caution) {
      head.push(make('p', caution, 'caution'));
    }
    if (known) {
      head.push(make('p', `Known so far: ${known.outcome}${known.note ? ` – ${known.note}` : ''}`, 'soft'));
    }
    return head;
  }

  #outcomes(): HTMLFieldSetElement {
    const { fine, grades, ifFitted } = this.#check;
    const set = make('fieldset');
    set.append(make('legend', 'What did you find?'), this.#choice('fine', fine));
    for (const grade of grades) {
      const mend = grade.fixedBy.startsWith('none') ? '' : 'put right by: ' + grade.fixedBy;
      set.append(this.#choice(grade.outcome, grade.looks, [grade.stop, mend].filter(Boolean).join('; ')));
    }
    if (ifFitted) {
      set.append(this.#choice('not-fitted', 'this boat does not have that part'));
    }
    return set;
  }

  #choice(outcome: Outcome, looks: string, extra = ''): HTMLLabelElement {
    const label = make('label', '', 'choice');
    const input = make('input');
    input.type = 'radio';
    input.name = this.#boat.id + '/' + this.#check.id;
    input.value = outcome;
    input.checked = this.#keeping.answer(this.#boat, this.#check.id).outcome === outcome;
    input.addEventListener('change', () => {
      this.#keeping.change(this.#boat, this.#check.id, { outcome });
      this.#tell();
    });
    const words = make('span');
    words.append(make('b', WORDS[outcome]), make('span', looks));
    if (extra) {
      words.append(make('span', ` (${extra})`, 'soft'));
    }
    label.append(input, words);
    return label;
  }

  #note(): HTMLTextAreaElement {
    const note = make('textarea');
    note.maxLength = LONGEST_NOTE;
    note.value = this.#keeping.answer(this.#boat, this.#check.id).note ?? '';
    note.addEventListener('input', () => this.#keeping.change(this.#boat, this.#check.id, { note: note.value.trim() }));
    return note;
  }

  #measured(): HTMLInputElement {
    const field = make('input');
    field.type = 'number';
    field.step = 'any';
    field.value = String(this.#keeping.answer(this.#boat, this.#check.id).measured ?? '');
    field.addEventListener('input', () => {
      const measured = field.value === '' ? null : Number(field.value);
      this.#keeping.change(this.#boat, this.#check.id, { measured });
    });
    return field;
  }

  /** Says at once what a result means that ends the visit. */
  #tell(): void {
    const { outcome } = this.#keeping.answer(this.#boat, this.#check.id);
    const grade = this.#check.grades.find((each) => each.outcome === outcome);
    this.#told.hidden = !grade?.stop;
    this.#told.textContent = grade?.stop ? `This means: ${grade.stop}. ${grade.why || grade.looks}.` : '';
  }
}

function line(words: string, field: HTMLElement): HTMLLabelElement {
  const label = make('label', words, 'line');
  label.append(field);
  return label;
}
