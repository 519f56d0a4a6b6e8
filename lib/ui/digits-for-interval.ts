/**
 * Digits after the mark that a value with an 80 % interval deserves: the half-width keeps one significant digit, or two
 * when it begins with 1 or 2 (JCGM 100:2008, 7.2.6 allows at most two). Never more than the dimension is usually given.
 */
export function digitsForInterval(halfWidth: number, usual: number): number {
  if (!(halfWidth > 0)) return usual;
  const wanted = Math.ceil(-Math.log10(halfWidth / 3) - 1e-9);
  return Math.min(Math.max(0, wanted), usual);
}
