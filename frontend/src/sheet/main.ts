import { Keeping } from './keeping';
import { make, part } from './make';
import type { Sheet } from './model';
import { save } from './results';
import { Sending } from './sending';
import { walk } from './walk';

const sheet = JSON.parse(part('data').textContent!) as Sheet;
const keeping = new Keeping(sheet.sheet);
const sending = new Sending(sheet, keeping);

/** With several boats, one is shown at a time. */
function pick(sections: readonly HTMLElement[]): HTMLElement {
  const label = make('label', 'Boat ', 'screen');
  const pick = make('select');
  pick.append(...sheet.boats.map((boat, i) => new Option(boat.name, String(i))));
  const show = (): void => sections.forEach((each, i) => (each.hidden = String(i) !== pick.value));
  pick.addEventListener('change', show);
  label.append(pick);
  show();
  return label;
}

function show(): void {
  part('storage').hidden = keeping.works;
  sending.show();
}

const sections = sheet.boats.map((boat) => walk(boat, keeping));
if (sections.length > 1) {
  part('boats').append(pick(sections));
}
part('boats').append(...sections);
part('save').addEventListener('click', () => save(sheet, keeping));
keeping.onChange(show);
show();
