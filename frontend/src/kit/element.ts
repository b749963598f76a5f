import type { Drawing, Draw, Room, Stop } from './drawing';
import { legendMarkup } from './legend';
import { Measurer } from './measurer';
import { readPalette, type Palette } from './palette';
import { onSchemeChange } from './scheme';
import { MARKUP, SHEET } from './styles';
import { Surface } from './surface';
import { Tour } from './tour';
import type { Summed } from '../model';

const NARROW = 560;
const calm = matchMedia('(prefers-reduced-motion: reduce)');

/**
 * A chart on a page. It draws when it has data and a width, again when either changes or the page turns light or
 * dark, and lets go of everything when it leaves the page.
 */
export abstract class ChartElement<D extends Summed> extends HTMLElement {
  readonly #draw: Draw<D>;
  readonly #key: HTMLElement;
  readonly #switch: HTMLElement;
  readonly #stage: HTMLElement;
  readonly #surface: Surface;
  readonly #tour: Tour;
  readonly #measurer = new Measurer();
  readonly #resizes = new ResizeObserver(() => this.#resized());
  #stopWatching: (() => void) | undefined;
  #palette: Palette | undefined;
  #data: D | null = null;
  #width = 0;
  #keyShown = '';
  #detail = false;
  #planned = false;

  protected constructor(draw: Draw<D>) {
    super();
    this.#draw = draw;
    const root = this.attachShadow({ mode: 'open' });
    root.innerHTML = `<style>${SHEET}</style>${MARKUP}`;
    this.#key = part(root, '.keys');
    this.#switch = part(root, 'button');
    this.#switch.onclick = () => this.#turnDetail();
    this.#stage = part(root, '.stage');
    this.#surface = new Surface(part(root, '.drawing'));
    this.#tour = new Tour(this.#stage, this.#surface, part(root, '.ring'), part(root, '.tip'), part(root, '.live'));
    this.#tour.onSelect = (stop) => this.#select(stop);
  }

  get data(): D | null {
    return this.#data;
  }

  set data(data: D | null) {
    this.#data = data;
    this.#plan();
  }

  connectedCallback(): void {
    this.#adoptEarlyData();
    this.#resizes.observe(this);
    this.#stopWatching = onSchemeChange(() => this.#recolour());
    this.#recolour();
  }

  disconnectedCallback(): void {
    this.#resizes.disconnect();
    this.#stopWatching?.();
    this.#surface.dispose();
    this.#width = 0;
  }

  /** A value set before this class was known sits on the object itself and would hide the accessor. */
  #adoptEarlyData(): void {
    if (Object.hasOwn(this, 'data')) {
      const early = this.data;
      delete (this as { data?: D | null }).data;
      this.data = early;
    }
  }

  #recolour(): void {
    const before = JSON.stringify(this.#palette);
    this.#palette = readPalette(part(this.shadowRoot!, '.probe'));
    if (JSON.stringify(this.#palette) === before) {
      return;
    }
    for (const name of ['ink', 'muted', 'wash', 'paper', 'focus'] as const) {
      this.style.setProperty(`--_${name}`, this.#palette[name]);
    }
    this.#plan();
  }

  #resized(): void {
    const width = Math.floor(this.clientWidth);
    if (width !== this.#width) {
      this.#width = width;
      this.#plan();
    }
  }

  /** Several changes in one turn make one drawing. */
  #plan(): void {
    if (!this.#planned) {
      this.#planned = true;
      queueMicrotask(() => {
        this.#planned = false;
        this.#redraw();
      });
    }
  }

  #redraw(): void {
    if (!this.#data || !this.#palette || this.#width === 0 || !this.isConnected) {
      return;
    }
    const room = this.#room(this.#palette);
    const drawing = this.#draw(this.#data, room);
    this.#stage.hidden = false;
    this.#stage.setAttribute('aria-label', this.#data.summary);
    this.#stage.classList.toggle('selectable', drawing.selectable ?? false);
    this.#fillTop(drawing, room.palette);
    this.#surface.show(drawing, room, !calm.matches);
    this.#tour.take(drawing);
  }

  #room(palette: Palette): Room {
    return {
      width: this.#width,
      narrow: this.#width < NARROW,
      detail: this.#detail,
      palette,
      measure: (text, size) => this.#measurer.width(text, size, palette.font),
    };
  }

  /** The key and the switch change seldom; left alone they keep the focus and cost nothing. */
  #fillTop(drawing: Drawing, palette: Palette): void {
    const key = legendMarkup(drawing.legend, palette);
    if (key !== this.#keyShown) {
      this.#keyShown = key;
      this.#key.innerHTML = key;
    }
    this.#switch.hidden = drawing.detailSwitch === undefined;
    this.#switch.textContent = drawing.detailSwitch ?? '';
    this.#switch.setAttribute('aria-pressed', String(this.#detail));
  }

  #turnDetail(): void {
    this.#detail = !this.#detail;
    this.#plan();
  }

  #select(stop: Stop): void {
    if (stop.boat !== undefined) {
      const detail = { id: stop.boat };
      this.dispatchEvent(new CustomEvent('boat-selected', { detail, bubbles: true, composed: true }));
    }
  }
}

function part(root: ParentNode, selector: string): HTMLElement {
  return root.querySelector<HTMLElement>(selector)!;
}

/** Registers a drawing function under an element name. */
export function define<D extends Summed>(name: string, draw: Draw<D>): void {
  if (!customElements.get(name)) {
    customElements.define(
      name,
      class extends ChartElement<D> {
        constructor() {
          super(draw);
        }
      },
    );
  }
}
