/** Digits that are written out: more than anybody measures, fewer than the noise of a conversion. */
const DIGITS = 8;

export function writtenNumber(value: number): number {
  return Number(value.toPrecision(DIGITS));
}

/** A number as XML has it; never with an exponent, which older readers stumble over. */
export function writtenDecimal(value: number): string {
  const number = writtenNumber(value);
  const text = String(number);
  return /e/i.test(text) ? number.toFixed(12).replace(/\.?0+$/, "") : text;
}
