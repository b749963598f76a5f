import type { Keeping } from './keeping';
import { made, type Sheet } from './model';

/** Puts together the file of results, as `report.FieldResultsReader` reads it. */
export function results(sheet: Sheet, keeping: Keeping): object {
  return {
    format: 'keelweigh-field-results',
    formatVersion: 1,
    sheet: sheet.sheet,
    boats: sheet.boats.map((boat) => ({
      boat: boat.id,
      version: boat.version,
      tag: boat.tag,
      findings: made(boat, keeping.answers(boat)).map((check) => {
        const { outcome, note, measured } = keeping.answer(boat, check.id);
        return {
          check: check.id,
          outcome,
          ...(note ? { note } : {}),
          ...(Number.isFinite(measured) ? { measured } : {}),
        };
      }),
    })),
  };
}

/** Hands the file to the browser to save. */
export function save(sheet: Sheet, keeping: Keeping): void {
  const link = document.createElement('a');
  const file = new Blob([JSON.stringify(results(sheet, keeping), null, 1)], { type: 'application/json' });
  link.href = URL.createObjectURL(file);
  link.download = 'field-results-' + sheet.sheet.slice(0, 17) + '.json';
  document.body.append(link);
  link.click();
  link.remove();
}
