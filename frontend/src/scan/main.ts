import { Camera, cameraAllowed } from './camera';
import { readPicture } from './picture';
import { read } from './reading';
import { SAID, whyNoCamera } from './sentences';

const START = 'Scan the code';
const STOP = 'Stop the camera';
const FRAME_PATIENCE_MS = 40;

/**
 * Reads the code of a field sheet with the camera, or from a picture that somebody chooses. Nothing leaves the browser but
 * the code, in the event `code-scanned`. The camera is off as soon as a code is read, on request, and when this leaves the page.
 */
class CodeScan extends HTMLElement {
  readonly #camera = document.createElement('vaadin-button');
  readonly #choose = document.createElement('vaadin-button');
  readonly #file = document.createElement('input');
  readonly #view = document.createElement('video');
  readonly #said = document.createElement('p');
  #open: Camera | undefined;

  connectedCallback(): void {
    if (!this.firstChild) {
      this.#build();
    }
  }

  disconnectedCallback(): void {
    this.#close('');
  }

  #build(): void {
    this.#camera.textContent = START;
    this.#camera.dataset.testid = 'scan-camera';
    this.#camera.addEventListener('click', () => (this.#open ? this.#close(SAID.stopped) : void this.#scan()));
    this.#choose.textContent = 'Choose a picture of the code';
    this.#choose.dataset.testid = 'scan-choose';
    this.#choose.addEventListener('click', () => this.#file.click());
    this.#file.type = 'file';
    this.#file.accept = 'image/*';
    this.#file.hidden = true;
    this.#file.dataset.testid = 'scan-picture';
    this.#file.addEventListener('change', () => void this.#readChosen());
    this.#view.muted = true;
    this.#view.playsInline = true;
    this.#view.hidden = true;
    this.#view.setAttribute('aria-label', 'What the camera sees');
    this.#said.setAttribute('role', 'status');
    this.#said.dataset.testid = 'scan-said';
    const row = document.createElement('div');
    row.className = 'kw-row';
    row.append(this.#camera, this.#choose);
    this.append(row, this.#file, this.#view, this.#said);
  }

  async #scan(): Promise<void> {
    if (!cameraAllowed()) {
      this.#say(SAID.insecure);
      return;
    }
    const camera = new Camera(this.#view);
    camera.onLost = () => this.#close(SAID.lost);
    this.#open = camera;
    this.#camera.textContent = STOP;
    this.#say(SAID.asking);
    try {
      if (await camera.open()) {
        this.#view.hidden = false;
        this.#say(SAID.looking);
        camera.watch((frame) => this.#look(frame));
      }
    } catch (error) {
      if (this.#open === camera) {
        this.#close(whyNoCamera(error));
      }
    }
  }

  #look(frame: ImageData): void {
    const reading = read(frame, FRAME_PATIENCE_MS);
    if (reading.kind === 'code') {
      this.#close(SAID.found);
      this.#hand(reading.code);
    } else if (reading.kind === 'other') {
      this.#say(SAID.other);
    }
  }

  async #readChosen(): Promise<void> {
    const file = this.#file.files?.[0];
    this.#file.value = '';
    if (!file) {
      return;
    }
    this.#close(SAID.lookingInPicture);
    try {
      const reading = await readPicture(file);
      this.#say(reading.kind === 'code' ? SAID.foundInPicture : SAID[reading.kind]);
      if (reading.kind === 'code') {
        this.#hand(reading.code);
      }
    } catch {
      this.#say(SAID.noPicture);
    }
  }

  #close(words: string): void {
    this.#open?.stop();
    this.#open = undefined;
    this.#view.hidden = true;
    this.#camera.textContent = START;
    this.#say(words);
  }

  /** A line that is read out is changed only when there is something new to say. */
  #say(words: string): void {
    if (this.#said.textContent !== words) {
      this.#said.textContent = words;
    }
  }

  #hand(code: string): void {
    this.dispatchEvent(new CustomEvent('code-scanned', { detail: { code } }));
  }
}

if (!customElements.get('kw-code-scan')) {
  customElements.define('kw-code-scan', CodeScan);
}
