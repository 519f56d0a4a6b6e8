/** One reading in four hundred lies so far off by chance. */
const FAR = 3;

/** Whether a residual over its uncertainty asks for a second look. */
export function isFarOff(residual: number | null | undefined): boolean {
  return typeof residual === "number" && Math.abs(residual) > FAR;
}
