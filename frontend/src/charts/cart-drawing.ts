import type { Draw, Room, Stop } from '../kit/drawing';
import { escape, wrap } from '../kit/text';
import type { CartDrawingData, CartScene, Figure } from '../model';
import { type Anchor, arrow, dimension, type Vector, words } from './cart-marks';

interface Frame {
  perMetre: number;
  perNewton: number;
  room: Room;
}

interface Force {
  name: string;
  figure: Figure;
  color: string;
  /** Where it acts and which way, on screen; a negative figure turns it round. */
  at: Vector;
  along: Vector;
  /** Drawn towards the point it acts on rather than away from it. */
  inward: boolean;
  label: { dx: number; dy: number; anchor: Anchor; fixed?: boolean };
}

const LEFT = 14;
const LONGEST_ARROW = 66;
const SHORTEST_ARROW = 14;
const DIMENSIONS = 106;
const BELOW = 128;

/** Each boat on its cart from the side: hull, axle, hand and slope to one scale, forces to another. */
export const cartDrawing: Draw<CartDrawingData> = (data, room) => {
  const longest = Math.max(...data.scenes.map((scene) => scene.hull.lengthM));
  const heaviest = Math.max(...data.scenes.map((scene) => scene.forces.weight.value));
  const frame = {
    perMetre: Math.min(150, (room.width - Math.max(...data.scenes.map(leftOf)) - besideBow(data, room)) / longest),
    perNewton: LONGEST_ARROW / heaviest,
    room,
  };
  let top = 0;
  const stops: Stop[] = [];
  const drawn = data.scenes.map((scene) => {
    const plan = planScene(scene, frame, top);
    top = plan.bottom;
    stops.push(...plan.stops);
    return plan.markup;
  });
  return {
    height: top,
    stops,
    legend: [],
    nearest: true,
    selectable: true,
    svg:
      `<svg width="${room.width}" height="${top}" font-family="${escape(room.palette.font)}" font-size="13" aria-hidden="true">` +
      `${drawn.join('')}</svg>`,
  };
};

/** Room for the words at the hand, which stand free of the hull. */
function besideBow(data: CartDrawingData, room: Room): number {
  const texts = data.scenes.flatMap(({ forces }) => [forceWords('in the hand', forces.hand, room), forceWords('pull', forces.pull, room)]);
  return Math.max(...texts.map((text) => room.measure(text, 13))) + 34;
}

/** Going down, what is measured below the ground stands out to the left of the stern. */
function leftOf(scene: CartScene): number {
  return LEFT + Math.max(0, -Math.sin(scene.slope.angleRad)) * (DIMENSIONS + 12);
}

/** On a narrow page the arrows carry names only. */
function forceWords(name: string, figure: Figure, room: Room): string {
  return room.narrow ? name : `${name} ${figure.label}`;
}

interface Plan {
  markup: string;
  stops: Stop[];
  bottom: number;
}

function planScene(scene: CartScene, frame: Frame, top: number): Plan {
  const { room, perMetre } = frame;
  const verdict = wrap(scene.verdict, room.width - 4, 13, room.measure);
  const rise = Math.sin(scene.slope.angleRad) * scene.hull.lengthM * perMetre;
  const above = (hullBottom(scene) + scene.hull.heightM) * perMetre + 46;
  const head = top + 24 + verdict.length * 18;
  // Where the stern stands over the axle's height: the origin of the scene.
  const origin: Vector = [leftOf(scene), head + above + Math.max(0, rise)];
  const onScreen = placer(scene, frame, origin);
  const forces = forcesOf(scene, onScreen, room);
  const values = room.narrow ? valueLines(forces, origin[1] + BELOW - Math.min(0, rise), room) : { markup: '', height: 0 };
  return {
    markup: [
      title(scene, verdict, top, room),
      ground(scene, frame, onScreen),
      hull(scene, frame, origin),
      wheel(scene, frame, onScreen),
      dimensions(scene, frame, onScreen),
      ...forces.map((force) => forceLabel(force, frame)),
      ...forces.map((force) => forceArrow(force, frame)),
      points(scene, onScreen, room),
      values.markup,
    ].join(''),
    stops: forces.map((force) => ({ text: `${scene.name}\n${force.name}: ${force.figure.label}`, at: force.at, boat: scene.id })),
    bottom: origin[1] + BELOW - Math.min(0, rise) + values.height + 16,
  };
}

/** Turns a station and a height above the axle, in metres on the slope, into pixels. */
function placer(scene: CartScene, { perMetre }: Frame, [left, top]: Vector): (x: number, z: number) => Vector {
  const cos = Math.cos(scene.slope.angleRad);
  const sin = Math.sin(scene.slope.angleRad);
  return (x, z) => [left + (x * cos - z * sin) * perMetre, top - (x * sin + z * cos) * perMetre];
}

/** The cradle carries the hull a little above the axle; never higher than the boat's centre of gravity allows. */
function hullBottom(scene: CartScene): number {
  return Math.max(0.03, scene.centre.aboveAxleM - scene.hull.heightM * 0.45);
}

function title(scene: CartScene, verdict: string[], top: number, { palette }: Room): string {
  const name = `<text x="2" y="${top + 16}" font-size="14" font-weight="600" fill="${palette.ink}">${escape(scene.name)}</text>`;
  const lines = verdict.map((line, index) => `<text x="2" y="${top + 36 + index * 18}" fill="${palette.muted}">${escape(line)}</text>`);
  return name + lines.join('');
}

function ground(scene: CartScene, { room, perMetre }: Frame, at: (x: number, z: number) => Vector): string {
  const { palette } = room;
  const low = -scene.axle.wheelRadiusM;
  const [x1, y1] = at(0, low);
  const [x2, y2] = at(scene.hull.lengthM + 30 / perMetre, low);
  const level = Math.abs(scene.slope.angleRad) < 0.005;
  const flat = level ? '' : `<path d="M${x1} ${y1}H${x2}" stroke="${palette.muted}" stroke-dasharray="3 4"/>`;
  const end = Math.min(room.width - 4, x2 + 10 + room.measure(scene.slope.label, 13));
  const label = words(scene.slope.label, end, (y1 + y2) / 2, 'end', palette.muted, room);
  return (
    `<path d="M${x1} ${y1}L${x2} ${y2}V${Math.max(y1, y2)}H${x1}Z" fill="${palette.wash}"/>${flat}` +
    `<path d="M${x1} ${y1}L${x2} ${y2}" stroke="${palette.muted}" stroke-width="2.5"/>${label}`
  );
}

function hull(scene: CartScene, { perMetre, room }: Frame, [left, top]: Vector): string {
  const length = scene.hull.lengthM * perMetre;
  const height = scene.hull.heightM * perMetre;
  const bottom = -hullBottom(scene) * perMetre;
  const deck = bottom - height;
  const outline =
    `M0 ${deck + height * 0.1}C${length * 0.2} ${deck + height * 0.24} ${length * 0.75} ${deck + height * 0.26} ${length} ${deck}` +
    `C${length * 0.985} ${deck + height * 0.5} ${length * 0.94} ${bottom} ${length * 0.8} ${bottom}` +
    `H${length * 0.18}C${length * 0.07} ${bottom} ${length * 0.015} ${deck + height * 0.6} 0 ${deck + height * 0.1}Z`;
  const degrees = (-scene.slope.angleRad * 180) / Math.PI;
  return (
    `<path transform="translate(${left} ${top}) rotate(${degrees})" d="${outline}" fill="${room.palette.depth[4]}" ` +
    `stroke="${room.palette.ink}" stroke-width="2" stroke-linejoin="round"/>`
  );
}

function wheel(scene: CartScene, { perMetre, room }: Frame, at: (x: number, z: number) => Vector): string {
  const { ink, paper } = room.palette;
  const [x, y] = at(scene.axle.fromSternM, 0);
  const [strutX, strutY] = at(scene.axle.fromSternM, hullBottom(scene));
  const radius = Math.max(4, scene.axle.wheelRadiusM * perMetre);
  return (
    `<path d="M${x} ${y}L${strutX} ${strutY}" stroke="${ink}" stroke-width="4"/>` +
    `<circle cx="${x}" cy="${y}" r="${radius - 1}" fill="${paper}" stroke="${ink}" stroke-width="2.5"/><circle cx="${x}" cy="${y}" r="2" fill="${ink}"/>`
  );
}

function dimensions(scene: CartScene, { perMetre, room }: Frame, at: (x: number, z: number) => Vector): string {
  const offset = (pixels: number): number => -scene.axle.wheelRadiusM - pixels / perMetre;
  const { axle, hull: boat } = scene;
  return (
    dimension(at(0, offset(80)), at(axle.fromSternM, offset(80)), axle.label, room) +
    dimension(at(0, offset(DIMENSIONS)), at(boat.lengthM, offset(DIMENSIONS)), boat.lengthLabel, room)
  );
}

function forcesOf(scene: CartScene, at: (x: number, z: number) => Vector, { palette }: Room): Force[] {
  const { weight, wheels, hand, pull } = scene.forces;
  const cos = Math.cos(scene.slope.angleRad);
  const sin = Math.sin(scene.slope.angleRad);
  const centre = at(scene.centre.fromSternM, scene.centre.aboveAxleM);
  const grip = at(scene.hand.fromSternM, scene.hand.aboveAxleM);
  const contact = at(scene.axle.fromSternM, -scene.axle.wheelRadiusM);
  const ahead = scene.centre.fromSternM >= scene.axle.fromSternM;
  const side = (right: boolean): Force['label'] => ({ dx: right ? 6 : -6, dy: 2, anchor: right ? 'start' : 'end' });
  const lifts = hand.value >= 0;
  const handLine = (dy: number): Force['label'] => ({ dx: SHORTEST_ARROW + 10, dy, anchor: 'start', fixed: true });
  const [ink, green, orange, blue] = [palette.ink, palette.series[2], palette.series[1], palette.series[0]];
  return [
    { name: 'weight', figure: weight, color: ink, at: centre, along: [0, 1], inward: false, label: side(ahead) },
    { name: 'on the wheels', figure: wheels, color: green, at: contact, along: [-sin, -cos], inward: true, label: side(!ahead) },
    { name: 'in the hand', figure: hand, color: orange, at: grip, along: [-sin, -cos], inward: false, label: handLine(lifts ? -16 : 20) },
    { name: 'pull', figure: pull, color: blue, at: grip, along: [cos, -sin], inward: false, label: handLine(lifts ? 4 : -2) },
  ];
}

/** From where a force is drawn to where. */
function shaft(force: Force, perNewton: number): [tail: Vector, tip: Vector] {
  const length = Math.max(SHORTEST_ARROW, Math.abs(force.figure.value) * perNewton) * (force.figure.value < 0 ? -1 : 1);
  const [dx, dy] = [force.along[0] * length, force.along[1] * length];
  const [x, y] = force.at;
  return force.inward ? [[x - dx, y - dy], [x, y]] : [[x, y], [x + dx, y + dy]];
}

function forceArrow(force: Force, { perNewton }: Frame): string {
  const [tail, tip] = shaft(force, perNewton);
  return arrow(tail, tip, force.color, force.name);
}

/** At the free end of an arrow, or, for the two at the hand, on fixed lines where neither covers the other. */
function forceLabel(force: Force, { perNewton, room }: Frame): string {
  const [tail, tip] = shaft(force, perNewton);
  const free = force.label.fixed ? force.at : force.inward ? tail : tip;
  const text = forceWords(force.name, force.figure, room);
  const x = keepInside(free[0] + force.label.dx, room.measure(text, 13), force.label.anchor, room.width);
  return words(text, x, free[1] + force.label.dy, force.label.anchor, room.palette.ink, room);
}

function keepInside(x: number, width: number, anchor: Anchor, room: number): number {
  return anchor === 'end' ? Math.min(room - 2, Math.max(x, width + 2)) : Math.max(2, Math.min(x, room - width - 2));
}

function points(scene: CartScene, at: (x: number, z: number) => Vector, { palette }: Room): string {
  const [x, y] = at(scene.centre.fromSternM, scene.centre.aboveAxleM);
  const [handX, handY] = at(scene.hand.fromSternM, scene.hand.aboveAxleM);
  return (
    `<circle cx="${x}" cy="${y}" r="5" fill="${palette.paper}" stroke="${palette.ink}" stroke-width="2"/>` +
    `<path d="M${x} ${y}V${y - 5}A5 5 0 0 1 ${x + 5} ${y}ZM${x} ${y}V${y + 5}A5 5 0 0 1 ${x - 5} ${y}Z" fill="${palette.ink}"/>` +
    `<circle cx="${handX}" cy="${handY}" r="5" fill="${palette.paper}" stroke="${palette.ink}" stroke-width="2"/>`
  );
}

/** The values that have no room at the arrows, two to a line. */
function valueLines(forces: Force[], top: number, { width, palette }: Room): { markup: string; height: number } {
  const cells = forces.map((force, index) => {
    const x = (index % 2) * (width / 2);
    const y = top + 6 + Math.floor(index / 2) * 38;
    return (
      `<rect x="${x}" y="${y}" width="4" height="32" fill="${force.color}"/>` +
      `<text x="${x + 10}" y="${y + 12}" fill="${palette.muted}">${escape(force.name)}</text>` +
      `<text x="${x + 10}" y="${y + 29}" font-weight="600" fill="${palette.ink}">${escape(force.figure.label)}</text>`
    );
  });
  return { markup: cells.join(''), height: 82 };
}
