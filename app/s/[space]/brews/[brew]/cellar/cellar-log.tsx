import Link from "next/link";
import type { LoggedReading } from "@/lib/model/log/logged-readings";
import { CELLAR_LABELS, CELLAR_SERIES } from "@/lib/ui/cellar/cellar-point";
import type { CellarPart } from "./cellar-part";
import { LoggedLine } from "./logged-line";

/** So many are looked at; a probe writes thousands. */
const SHOWN = 25;
const MOST_SHOWN = 1000;

/** Every reading of the fermenter, the latest first, each with what became of it. */
export function CellarLog({ showAll, ...part }: CellarPart & { readonly showAll: boolean }) {
  const readings = part.brew.log.readings.filter(isOfCellar).reverse();
  const shown = readings.slice(0, showAll ? MOST_SHOWN : SHOWN);
  return (
    <section aria-labelledby="readings">
      <h2 id="readings">Readings</h2>
      {readings.length === 0 ? <p className="mt-2 text-muted">None yet.</p> : null}
      <ul className="list-ruled mt-2">
        {shown.map((reading) => (
          <LoggedLine key={reading.id} reading={reading} label={labelOf(reading)} {...lineOf(part)} />
        ))}
      </ul>
      {shown.length < readings.length ? (
        <p className="mt-2">
          {String(shown.length)} of {String(readings.length)} readings.{" "}
          {showAll ? null : (
            <Link href="?readings=all" className="target">
              Show all
            </Link>
          )}
        </p>
      ) : null}
      {part.brew.leftOut === 0 ? null : (
        <p className="mt-2 max-w-prose text-muted">
          The sensors of this brew sent so many readings that every so-manyth is read here, spread evenly; the other{" "}
          {String(part.brew.leftOut)} are in the log as well, and in what is taken out of it.
        </p>
      )}
    </section>
  );
}

function isOfCellar({ measured }: LoggedReading): boolean {
  return CELLAR_SERIES.some((each) => each === measured.quantity);
}

function labelOf({ measured }: LoggedReading): string {
  const series = CELLAR_SERIES.find((each) => each === measured.quantity);
  return series === undefined ? "Reading" : CELLAR_LABELS[series];
}

/** What crosses to the browser with each line: no more of the brew than it needs. */
function lineOf({ brew, fermentation, preferences, record }: CellarPart) {
  const { id, mayWrite } = brew;
  return { brew: { id, mayWrite }, fermentation: { original: fermentation.original }, preferences, record };
}
