/** An amount as it is typed: 12 400 g with a factor of 1000 are "12.4". */
export function typedText(amount: number, factor: number): string {
  return String(amount / factor);
}
