const MINUS = "−";

/** A number with so many digits after a decimal point, with a true minus sign and no minus before zero. */
export function fixedDigits(value: number, digits: number): string {
  const text = value.toFixed(digits);
  if (!text.startsWith("-")) return text;
  return /[1-9]/.test(text) ? MINUS + text.slice(1) : text.slice(1);
}
