import type { Drawing, Stop } from './drawing';
import type { Surface } from './surface';

const STEPS: Record<string, number> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };
const REACH = 40;

/** Walks through the stops of a drawing by arrow keys or pointer: shows the words beside each and reads them out. */
export class Tour {
  onSelect: (stop: Stop) => void = () => {};
  #drawing: Drawing = { height: 0, stops: [], legend: [] };
  #at = -1;

  constructor(
    private readonly stage: HTMLElement,
    private readonly surface: Surface,
    private readonly ring: HTMLElement,
    private readonly tip: HTMLElement,
    private readonly live: HTMLElement,
  ) {
    stage.addEventListener('keydown', (event) => this.#key(event));
    stage.addEventListener('blur', () => this.#leave());
    stage.addEventListener('pointermove', (event) => this.#move(event));
    stage.addEventListener('pointerleave', () => this.#hide());
    stage.addEventListener('click', (event) => this.#click(event));
    surface.onMark = (mark, kind) => this.#mark(mark, kind);
  }

  take(drawing: Drawing): void {
    this.#drawing = drawing;
    const stop = drawing.stops[this.#at];
    if (stop && !this.ring.hidden) {
      this.#show(stop, true);
    } else {
      this.#leave();
    }
  }

  #key(event: KeyboardEvent): void {
    const { stops } = this.#drawing;
    if (stops.length === 0) {
      return;
    }
    if (event.key in STEPS) {
      this.#at = this.#at < 0 ? 0 : (this.#at + (STEPS[event.key] ?? 0) + stops.length) % stops.length;
    } else if (event.key === 'Home') {
      this.#at = 0;
    } else if (event.key === 'End') {
      this.#at = stops.length - 1;
    } else {
      this.#otherKey(event);
      return;
    }
    event.preventDefault();
    this.#announce();
  }

  #otherKey(event: KeyboardEvent): void {
    const stop = this.#drawing.stops[this.#at];
    if (event.key === 'Escape') {
      this.#hide();
    } else if (stop && (event.key === 'Enter' || event.key === ' ')) {
      event.preventDefault();
      this.onSelect(stop);
    }
  }

  #announce(): void {
    const stop = this.#drawing.stops[this.#at];
    if (stop) {
      this.#show(stop, true);
      this.live.textContent = stop.text.replaceAll('\n', '. ');
    }
  }

  #mark(mark: string | null, kind: 'over' | 'click'): void {
    const stop = this.#drawing.stops.find((each) => each.mark === mark);
    if (kind === 'click') {
      if (stop) {
        this.onSelect(stop);
      }
    } else if (stop) {
      this.#show(stop, false);
    } else if (!this.#drawing.nearest) {
      this.#hide();
    }
  }

  #move(event: PointerEvent): void {
    if (!this.#drawing.nearest) {
      return;
    }
    const stop = this.#nearest(event);
    if (stop) {
      this.#show(stop, false);
    } else {
      this.#hide();
    }
  }

  #click(event: MouseEvent): void {
    if (this.#drawing.nearest) {
      const stop = this.#nearest(event);
      if (stop) {
        this.onSelect(stop);
      }
    }
  }

  #nearest(event: MouseEvent): Stop | undefined {
    const box = this.stage.getBoundingClientRect();
    const [x, y] = [event.clientX - box.left, event.clientY - box.top];
    let best: Stop | undefined;
    let reach = REACH;
    for (const stop of this.#drawing.stops) {
      const [left, top] = this.surface.place(stop);
      const far = Math.hypot(left - x, top - y);
      if (far < reach) {
        reach = far;
        best = stop;
      }
    }
    return best;
  }

  #show(stop: Stop, byKey: boolean): void {
    const [x, y] = this.surface.place(stop);
    const left = this.stage.offsetLeft + x;
    const top = this.stage.offsetTop + y;
    this.ring.hidden = !byKey;
    this.ring.style.left = `${left}px`;
    this.ring.style.top = `${top}px`;
    this.tip.hidden = false;
    this.tip.textContent = stop.text;
    this.#placeTip(left, top);
  }

  /** Beside the mark, on the side that has room. */
  #placeTip(left: number, top: number): void {
    const room = this.stage.offsetWidth;
    const { offsetWidth: width, offsetHeight: height } = this.tip;
    const right = left + 16;
    const x = right + width <= room ? right : Math.max(0, Math.min(left - 16 - width, room - width));
    const covers = x < left + 16 && x + width > left - 16;
    const above = top - height - 18;
    this.tip.style.left = `${x}px`;
    this.tip.style.top = `${covers ? (above >= 0 ? above : top + 18) : Math.max(0, top - height / 2)}px`;
  }

  #hide(): void {
    this.tip.hidden = true;
    this.ring.hidden = true;
  }

  #leave(): void {
    this.#at = -1;
    this.live.textContent = '';
    this.#hide();
  }
}
