/** The colours a drawing uses, already resolved for the element's light or dark surroundings. */
export interface Palette {
  dark: boolean;
  paper: string;
  ink: string;
  muted: string;
  line: string;
  wash: string;
  neutral: string;
  focus: string;
  /** Four hues that keep 3:1 against both papers. */
  series: [string, string, string, string];
  /** One hue from strong to faint, for ordered shares. */
  depth: [string, string, string, string, string, string];
  font: string;
}

type Defaults = Record<string, [light: string, dark: string]>;

// Each can be set from outside as --kw-<name>; the page's own stylesheet does so for most.
const DEFAULTS: Defaults = {
  'chart-paper': ['#ffffff', '#1b1f24'],
  ink: ['#17303a', '#e9eff0'],
  'ink-soft': ['#51646c', '#a8b8bd'],
  line: ['#d6dfe0', '#3a444b'],
  sunk: ['#eef3f2', '#262d33'],
  neutral: ['#7b898f', '#84939a'],
  water: ['#005a8c', '#7cc4ee'],
  money: ['#0072b2', '#0072b2'],
  condition: ['#d55e00', '#d55e00'],
  'on-water': ['#009e73', '#009e73'],
  'on-land': ['#cc79a7', '#cc79a7'],
  'depth-1': ['#0b4a63', '#bfe6f2'],
  'depth-2': ['#2a6a85', '#86bfd3'],
  'depth-3': ['#4c889f', '#5a97ad'],
  'depth-4': ['#72a5b8', '#3f7388'],
  'depth-5': ['#9bc1cf', '#2f5565'],
  'depth-6': ['#c3dbe3', '#2a4654'],
};

/**
 * Reads the palette where the element stands. CanvasText follows the used colour scheme however it was chosen
 * (system setting, a page's colour-scheme property, a theme switch), so it tells light from dark.
 */
export function readPalette(probe: HTMLElement): Palette {
  const style = getComputedStyle(probe);
  probe.style.color = 'CanvasText';
  const dark = brightness(style.color) > 0.5;
  const read = (name: string, otherwise?: string): string => {
    const [light, night] = DEFAULTS[name] ?? ['black', 'white'];
    probe.style.color = `var(--kw-${name}, ${otherwise ?? (dark ? night : light)})`;
    return style.color;
  };
  return {
    dark,
    paper: read('chart-paper', backdrop(probe)),
    ink: read('ink'),
    muted: read('ink-soft'),
    line: read('line'),
    wash: read('sunk'),
    neutral: read('neutral'),
    focus: read('water'),
    series: [read('money'), read('condition'), read('on-water'), read('on-land')],
    depth: [read('depth-1'), read('depth-2'), read('depth-3'), read('depth-4'), read('depth-5'), read('depth-6')],
    font: style.fontFamily || 'system-ui, sans-serif',
  };
}

/** The colour of the sheet the element lies on: that of the nearest element around it that has an opaque one. */
function backdrop(from: Element): string | undefined {
  for (let at: Element | null = from; at; at = around(at)) {
    const color = getComputedStyle(at).backgroundColor;
    if (/^rgb\(/.test(color)) {
      return color;
    }
  }
  return undefined;
}

function around(element: Element): Element | null {
  const root = element.getRootNode();
  return element.assignedSlot ?? element.parentElement ?? (root instanceof ShadowRoot ? root.host : null);
}

/** 0 for black, 1 for white, from the browser's own rgb() notation. */
export function brightness(rgb: string): number {
  const parts = (rgb.match(/[\d.]+/g) ?? []).map(Number);
  const [red = 0, green = 0, blue = 0] = parts;
  return (0.299 * red + 0.587 * green + 0.114 * blue) / 255;
}
