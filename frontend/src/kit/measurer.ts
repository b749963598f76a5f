/** Measures text on an off-screen canvas and remembers what it measured. */
export class Measurer {
  readonly #context = document.createElement('canvas').getContext('2d');
  readonly #known = new Map<string, number>();

  width(text: string, size: number, font: string): number {
    const key = `${size} ${font} ${text}`;
    let width = this.#known.get(key);
    if (width === undefined) {
      width = this.#measure(text, size, font);
      this.#known.set(key, width);
    }
    return width;
  }

  #measure(text: string, size: number, font: string): number {
    if (!this.#context) {
      return text.length * size * 0.56;
    }
    this.#context.font = `${size}px ${font}`;
    return this.#context.measureText(text).width;
  }
}
