import { platoOnDay, type FermentationCurve } from "@/lib/calc/fermentation";
import { degreesPlato } from "@/lib/calc/units";
import { thinned } from "@/lib/model/cellar/thinned";
import { CurveChart, type Point } from "@/lib/ui/curve-chart";
import { courseWords } from "@/lib/ui/cellar/course-words";
import { displayUnit } from "@/lib/ui/display-unit";
import { ExplainedCall } from "@/lib/ui/explained-call";
import { AttenuationFigures } from "./attenuation-figures";
import type { CellarPart } from "./cellar-part";
import { TemperatureCourse } from "./temperature-course";

/** More dots than this are one blot. */
const MOST_DOTS = 150;
const CURVE_POINTS = 60;
/** An explanation varies every input; a few readings show how. */
const MOST_EXPLAINED = 12;

/** The fermentation so far: in words, in figures, as curves. */
export function CourseSection({
  brew,
  fermentation,
  preferences,
  now,
}: Omit<CellarPart, "record"> & { readonly now: number }) {
  const { gravities, curve, original, expectedFinal } = fermentation;
  const words = courseWords(fermentation, preferences, now);
  const { unit, fromLibrary } = displayUnit("extract", preferences);
  const fitted = curveOf(fermentation).map(([day, plato]): Point => [day, fromLibrary(plato)]);
  return (
    <section aria-labelledby="course">
      <h2 id="course">The fermentation</h2>
      <p className="my-2">{words}</p>
      <AttenuationFigures fermentation={fermentation} preferences={preferences} />
      {gravities.length === 0 ? null : (
        <CurveChart
          title="Gravity over the days since pitching"
          description={`${String(gravities.length)} readings. ${words} Every reading stands in the list below.`}
          x={{ label: "Days since pitching", unit: "d" }}
          y={{ label: "Gravity", unit }}
          planned={fitted}
          measured={thinned(gravities, MOST_DOTS).map(({ day, value }) => ({ x: day, y: fromLibrary(value) }))}
          plannedLabel={fitted.length === 0 ? "" : "fitted"}
          measuredLabel="read"
        />
      )}
      {curve?.ok === true && original !== null ? (
        <ExplainedCall
          id="fermentation/fermentationCurve"
          args={[
            { originalPlato: original.plato, points: thinned(gravities, MOST_EXPLAINED).map(toPoint), expectedFinal },
          ]}
        />
      ) : null}
      <TemperatureCourse fermentation={fermentation} yeast={brew.recipe.yeast} preferences={preferences} />
    </section>
  );
}

function toPoint({ day, value, sd }: CellarPart["fermentation"]["gravities"][number]) {
  return { day, plato: value, sd };
}

/** The fitted curve from pitching to a little after it is done; nothing without a fit. */
function curveOf({ curve, original, gravities }: CellarPart["fermentation"]): readonly Point[] {
  if (curve?.ok !== true || original === null) return [];
  const last = Math.min(180, Math.max(curve.doneHigh80, gravities.at(-1)?.day ?? 0));
  return Array.from({ length: CURVE_POINTS + 1 }, (_, i): Point => {
    const day = (last * i) / CURVE_POINTS;
    return [day, platoAt(curve, original.plato, day)];
  });
}

function platoAt(curve: Extract<FermentationCurve, { ok: true }>, original: number, day: number): number {
  const { finalPlato, ratePerDay, middleDay } = curve;
  return platoOnDay({
    originalPlato: degreesPlato(original),
    finalPlato: degreesPlato(finalPlato),
    ratePerDay,
    middleDay,
    day,
  });
}
