/** At most so many of a series, evenly, the first and the last among them. */
export function thinned<T>(series: readonly T[], most: number): readonly T[] {
  if (series.length <= most) return series;
  const step = (series.length - 1) / (most - 1);
  return Array.from({ length: most }, (_, i) => series[Math.round(i * step)]).filter((each) => each !== undefined);
}
