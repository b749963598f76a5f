import { fieldCode } from './code';
import type { Keeping } from './keeping';
import { button, make, part, say } from './make';
import { made, type Boat, type Sheet } from './model';
import { modules, path } from './picture';

/** The part of the page that sends results back: how many there are, and for each boat its code in letters and as a picture. */
export class Sending {
  readonly #sheet: Sheet;
  readonly #keeping: Keeping;
  readonly #shown = new Map<string, { code: string; block: HTMLElement }>();

  constructor(sheet: Sheet, keeping: Keeping) {
    this.#sheet = sheet;
    this.#keeping = keeping;
  }

  show(): void {
    let all = 0;
    for (const boat of this.#sheet.boats) {
      const answers = this.#keeping.answers(boat);
      const count = made(boat, answers).length;
      all += count;
      this.#showCode(boat, count > 0 ? fieldCode(boat, answers) : '');
    }
    say(part('count'), all === 0 ? 'No result yet.' : `${all} ${all === 1 ? 'result is' : 'results are'} ready to send.`);
  }

  /** Typing a note changes no code; what is shown then stays, with the focus and the marked text in it. */
  #showCode(boat: Boat, code: string): void {
    const before = this.#shown.get(boat.id);
    if (before?.code === code || (!before && !code)) {
      return;
    }
    before?.block.remove();
    this.#shown.delete(boat.id);
    if (code) {
      const block = codeBlock(boat, code);
      this.#shown.set(boat.id, { code, block });
      part('codes').append(...this.#sheet.boats.flatMap((each) => this.#shown.get(each.id)?.block ?? []));
    }
  }
}

function codeBlock(boat: Boat, code: string): HTMLElement {
  const block = make('div', '', 'sent');
  const text = make('p', code, 'code');
  text.dataset.code = boat.id;
  const copy = button('Copy the code', () => {
    copy.textContent = copied(text) ? 'Copied' : 'Marked: now copy it';
  });
  block.append(make('h3', 'Code for ' + boat.name), text, copy, picture(boat, code));
  return block;
}

/** Files have no clipboard in many browsers; the old way works in most, and the text is marked in any case. */
function copied(text: HTMLElement): boolean {
  const range = document.createRange();
  range.selectNodeContents(text);
  getSelection()?.removeAllRanges();
  getSelection()?.addRange(range);
  try {
    return document.execCommand('copy');
  } catch {
    return false;
  }
}

function picture(boat: Boat, code: string): Node {
  const rows = modules(code);
  const drawing = (part('picture') as HTMLTemplateElement).content.cloneNode(true) as DocumentFragment;
  const svg = drawing.querySelector('svg')!;
  svg.setAttribute('viewBox', `0 0 ${rows.length} ${rows.length}`);
  svg.setAttribute('aria-label', `The code for ${boat.name} as a picture to scan, with the same letters as above`);
  svg.dataset.picture = boat.id;
  svg.querySelector('path')!.setAttribute('d', path(rows));
  return drawing;
}
