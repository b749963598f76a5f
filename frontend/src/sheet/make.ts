/** Makes an element with text, never markup: what people typed stays text. */
export function make<K extends keyof HTMLElementTagNameMap>(tag: K, text = '', className = ''): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  if (text) {
    element.textContent = text;
  }
  if (className) {
    element.className = className;
  }
  return element;
}

export function button(text: string, act: () => void, className = ''): HTMLButtonElement {
  const made = make('button', text, className);
  made.type = 'button';
  made.addEventListener('click', act);
  return made;
}

/** Makes a line that is read out when its text changes. */
export function status(className: string): HTMLParagraphElement {
  const line = make('p', '', className);
  line.setAttribute('role', 'status');
  return line;
}

/** Changes a line that is read out only where there is something new to say. */
export function say(line: HTMLElement, words: string): void {
  if (line.textContent !== words) {
    line.textContent = words;
  }
}

/** Finds a part that the page is sure to have. */
export function part(id: string): HTMLElement {
  return document.getElementById(id)!;
}
