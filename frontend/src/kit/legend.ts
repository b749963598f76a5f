import type { LegendEntry } from './drawing';
import type { Palette } from './palette';
import { svgPattern } from './pattern';
import { escape } from './text';

function swatch(entry: LegendEntry, index: number, palette: Palette): string {
  const { color } = entry.fill;
  switch (entry.shape ?? 'block') {
    case 'block':
      return (
        `<defs>${svgPattern(`key${index}`, entry.fill)}</defs>` +
        `<rect x="1" y="1" width="18" height="12" rx="2" fill="url(#key${index})"/>`
      );
    case 'line':
      return `<path d="M1 7H19" stroke="${color}" stroke-width="2.5"/>`;
    case 'dash':
      return `<path d="M1 7H19" stroke="${color}" stroke-width="2.5" stroke-dasharray="5 3"/>`;
    case 'diamond':
      return `<path d="M10 1L16 7L10 13L4 7Z" fill="${color}" stroke="${palette.paper}"/>`;
    case 'band':
      return `<rect x="1" y="1" width="18" height="12" fill="${color}" fill-opacity="0.3" stroke="${color}"/>`;
    case 'square':
      return `<rect x="5" y="2" width="10" height="10" fill="${color}"/>`;
    case 'triangle':
      return `<path d="M10 1L16 12H4Z" fill="${color}"/>`;
    case 'dot':
      return `<circle cx="10" cy="7" r="5" fill="${color}"/>`;
  }
}

/** The key above a drawing: what each hue, pattern and shape stands for. */
export function legendMarkup(entries: LegendEntry[], palette: Palette): string {
  return entries
    .map(
      (entry, index) =>
        `<span class="key"><svg width="20" height="14" aria-hidden="true">${swatch(entry, index, palette)}</svg>` +
        `${escape(entry.label)}</span>`,
    )
    .join('');
}
