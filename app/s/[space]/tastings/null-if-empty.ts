/** An empty field of a form is no value. */
export function nullIfEmpty(text: string): string | null {
  return text.trim() === "" ? null : text;
}
