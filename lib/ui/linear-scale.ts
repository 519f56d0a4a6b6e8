export type Span = readonly [from: number, to: number];

/** Maps one span linearly on another; an empty span goes to the middle. */
export function linearScale(domain: Span, range: Span): (value: number) => number {
  const [d0, d1] = domain;
  const [r0, r1] = range;
  if (d0 === d1) return () => (r0 + r1) / 2;
  return (value) => r0 + ((value - d0) / (d1 - d0)) * (r1 - r0);
}

/** Round values (1, 2 or 5 times a power of ten apart) inside a span, about as many as wanted. */
export function niceTicks([from, to]: Span, wanted: number): readonly number[] {
  if (!(to > from) || wanted < 1) return [from];
  const step = niceStep((to - from) / wanted);
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => Number(((first + i) * step).toPrecision(12)));
}

/** The span of the values, widened to whole steps so that nothing lies on the frame. */
export function niceSpan(values: readonly number[], wanted: number): Span {
  if (values.length === 0) return [0, 1];
  const [low, high] = [Math.min(...values), Math.max(...values)];
  if (low === high) return [low - 1, high + 1];
  const step = niceStep((high - low) / wanted);
  return [Math.floor(low / step) * step, Math.ceil(high / step) * step];
}

function niceStep(rough: number): number {
  const power = 10 ** Math.floor(Math.log10(rough));
  const factor = [1, 2, 5].find((each) => each * power >= rough * 0.999) ?? 10;
  return factor * power;
}
