import { Card } from './card';
import type { Keeping } from './keeping';
import { make, say, status } from './make';
import type { Boat } from './model';

/** The walk round one boat, one check a screen. */
export function walk(boat: Boat, keeping: Keeping): HTMLElement {
  const section = make('section', '', 'boat');
  section.dataset.boat = boat.id;
  const place = make('select');
  const label = make('label', 'Check ', 'screen');
  label.append(place);
  const progress = status('soft screen');
  const left = (): number[] =>
    boat.checks.flatMap((check, i) => (keeping.answer(boat, check.id).outcome === undefined ? [i] : []));
  const show = (index: number): void => {
    cards.forEach((each, i) => (each.element.hidden = i !== index));
    place.value = String(index);
  };
  const tell = (): void => {
    const open = left();
    const minutes = Math.round(open.reduce((sum, i) => sum + boat.checks[i]!.minutes, 0));
    const done = boat.checks.length - open.length;
    say(progress, `${done} of ${boat.checks.length} checked; ${minutes} minutes of checks left.`);
  };
  const go = (index: number): void => {
    const next = index >= boat.checks.length ? (left()[0] ?? 0) : Math.max(0, index);
    show(next);
    cards[next]!.focus();
  };
  const cards = boat.checks.map((check, i) => new Card(boat, check, keeping, i + 1, go));
  place.append(...boat.checks.map((check, i) => new Option(`${i + 1}. ${check.title}`, String(i))));
  place.addEventListener('change', () => show(Number(place.value)));
  section.append(make('h2', boat.name), make('p', boat.what, 'soft'), label, progress);
  section.append(...cards.map((each) => each.element));
  show(left()[0] ?? 0);
  tell();
  keeping.onChange(tell);
  return section;
}
