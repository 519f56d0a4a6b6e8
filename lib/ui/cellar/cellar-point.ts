import type { SeriesId } from "@/lib/model/log/series";
import type { Fermentation } from "@/lib/model/cellar/fermentation";
import type { MeasuringPoint } from "../brew/reading-draft";
import { seriesPoint } from "../brew/series-point";

/** What is read in the fermenter by hand, the usual first. */
export const CELLAR_SERIES = [
  "fermenter.gravity",
  "fermenter.temperature",
  "fermenter.pressure",
  "fermenter.ph",
] as const satisfies readonly SeriesId[];

/** What each is called where the fermenter is understood. */
export const CELLAR_LABELS: Readonly<Record<(typeof CELLAR_SERIES)[number], string>> = {
  "fermenter.gravity": "Gravity",
  "fermenter.temperature": "Temperature",
  "fermenter.pressure": "Gauge pressure",
  "fermenter.ph": "pH",
};

/** A measuring point in the fermenter; with the extract before fermentation known, a refractometer is of use as well. */
export function cellarPoint(
  quantity: (typeof CELLAR_SERIES)[number],
  { original }: Pick<Fermentation, "original">,
): MeasuringPoint {
  const point = { ...seriesPoint(quantity, null), label: CELLAR_LABELS[quantity] };
  if (quantity !== "fermenter.gravity" || original === null) return point;
  return { ...point, instruments: [...point.instruments, "refractometer"], fermentingFrom: original.plato };
}
