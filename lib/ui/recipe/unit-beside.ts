/** The unit to print beside a text; a text with a unit of its own gets none. */
export function unitBeside(text: string, unit: string): string {
  return /[^\d\s.,/+−-]/.test(text) ? "" : unit;
}
