import { fitted } from './reading';

const FRAME_PAUSE_MS = 100;
const LARGEST_FRAME = 1024;

/** Whether the browser gives this page a camera at all. */
export function cameraAllowed(): boolean {
  return window.isSecureContext && navigator.mediaDevices !== undefined;
}

/** A camera that shows its picture and hands over frames until it is stopped. */
export class Camera {
  readonly #view: HTMLVideoElement;
  readonly #board = document.createElement('canvas');
  #stream: MediaStream | undefined;
  #timer = 0;
  #stopped = false;
  /** Called when the camera ends by itself: unplugged, or no longer allowed. */
  onLost: () => void = () => {};

  constructor(view: HTMLVideoElement) {
    this.#view = view;
  }

  /** Opens the camera at the back if there is one; tells whether it is on, for it may have been stopped meanwhile. */
  async open(): Promise<boolean> {
    const wanted = { facingMode: 'environment', width: { ideal: 1280 }, height: { ideal: 960 } };
    const stream = await navigator.mediaDevices.getUserMedia({ video: wanted, audio: false });
    this.#stream = stream;
    if (this.#stopped) {
      this.stop();
      return false;
    }
    stream.getTracks().forEach((track) => (track.onended = () => this.onLost()));
    this.#view.srcObject = stream;
    await this.#view.play();
    return !this.#stopped;
  }

  /** Hands over frame after frame, with a pause between them that leaves the page time for everything else. */
  watch(look: (frame: ImageData) => void): void {
    if (this.#stopped) {
      return;
    }
    const frame = this.#frame();
    if (frame) {
      look(frame);
    }
    this.#timer = window.setTimeout(() => this.watch(look), FRAME_PAUSE_MS);
  }

  stop(): void {
    this.#stopped = true;
    window.clearTimeout(this.#timer);
    this.#stream?.getTracks().forEach((track) => {
      track.onended = null;
      track.stop();
    });
    this.#view.srcObject = null;
  }

  #frame(): ImageData | undefined {
    const { videoWidth, videoHeight } = this.#view;
    return videoWidth > 0 ? pixels(this.#board, this.#view, fitted(videoWidth, videoHeight, LARGEST_FRAME)) : undefined;
  }
}

/** Draws a picture in the given size and reads it back. */
export function pixels(
  board: HTMLCanvasElement,
  picture: CanvasImageSource,
  { width, height }: { width: number; height: number },
): ImageData {
  board.width = width;
  board.height = height;
  const pen = board.getContext('2d', { willReadFrequently: true })!;
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, width, height);
  pen.drawImage(picture, 0, 0, width, height);
  return pen.getImageData(0, 0, width, height);
}
