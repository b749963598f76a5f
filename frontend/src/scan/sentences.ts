/** What people are told while a code is scanned. Every sentence that refuses says what to do instead. */
export const SAID = {
  asking: 'Asking for the camera. Allow it if the browser asks.',
  looking: 'The camera is on. Hold it so that the whole code with its white edge is in the picture.',
  stopped: 'The camera is off.',
  lost: 'The camera was switched off. Scan again, or choose a picture of the code.',
  found: 'The code was read; the camera is off.',
  foundInPicture: 'The code was read from the picture.',
  lookingInPicture: 'Looking for the code in the picture.',
  other: 'That is a code of another kind. Scan the one under “Send back” on the field sheet.',
  none: 'No code was found in this picture. Take one that shows the whole code straight, large and sharp, or type the code.',
  noPicture: 'The browser cannot read this file as a picture. Choose a JPEG or PNG, or type the code.',
  insecure:
    'This page cannot use the camera: browsers allow that only on pages opened with https or on the computer that runs ' +
    'Keelweigh (localhost). Choose a picture of the code, or type it.',
  noCamera: 'No camera was found. Choose a picture of the code, or type it.',
  refused:
    'The camera was not allowed. Allow it for this page in the browser’s settings and scan again, choose a picture of ' +
    'the code, or type it.',
  busy: 'The camera does not start; perhaps another program uses it. Scan again, choose a picture of the code, or type it.',
} as const;

/** Tells why a camera did not open, by the names that Media Capture and Streams (W3C) gives the errors of `getUserMedia`. */
export function whyNoCamera(error: unknown): string {
  switch (error instanceof Error || error instanceof DOMException ? error.name : '') {
    case 'NotAllowedError':
    case 'SecurityError':
      return SAID.refused;
    case 'NotFoundError':
    case 'OverconstrainedError':
      return SAID.noCamera;
    default:
      return SAID.busy;
  }
}
