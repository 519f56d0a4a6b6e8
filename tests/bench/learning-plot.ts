import { OUTCOMES, summary, WAYS, type Outcome, type Predicted, type Way } from "../support/learning-club";

const TITLES: Readonly<Record<Outcome, string>> = {
  "fermenter.originalExtract": "Original extract, °P",
  "fermenter.volume": "Into the fermenter, %",
  "kettle.heatingTime": "Time to the boil, %",
};
const DASHES: Readonly<Record<Way, string>> = { typical: "2 5", alone: "9 5", pooled: "none" };
const WORDS: Readonly<Record<Way, string>> = {
  typical: "typical figures, never learned",
  alone: "from its own brews",
  pooled: "with the help of its kind",
};
const WIDE = 240;
const HIGH = 170;
const GAP = 30;
const LEFT = 44;
const TOP = 58;

type Stages = readonly (readonly [from: number, to: number])[];

/** Errors of prediction against logged brews: three panels, three lines each, told apart by their strokes and not by colour alone. */
export function learningPlot(predictions: readonly Predicted[], stages: Stages): string {
  const width = LEFT + OUTCOMES.length * (WIDE + GAP);
  const panels = OUTCOMES.map((outcome, i) =>
    panel(
      predictions.filter((each) => each.outcome === outcome),
      { outcome, stages, left: LEFT + i * (WIDE + GAP) },
    ),
  );
  const key = WAYS.map((way, i) => {
    const x = LEFT + i * 250;
    const line = `<line x1="${String(x)}" x2="${String(x + 36)}" y1="18" y2="18" stroke-dasharray="${DASHES[way]}"/>`;
    return `${line}<text x="${String(x + 44)}" y="22">${WORDS[way]}</text>`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${String(width)} ${String(TOP + HIGH + 44)}" role="img" aria-labelledby="t">
<title id="t">Errors of prediction fall with the number of logged brews</title>
<style>svg{background:#fff}text{font:12px sans-serif;fill:#111}line,polyline{stroke:#111;stroke-width:2;fill:none}.axis{stroke:#777;stroke-width:1}</style>
${key.join("\n")}
${panels.join("\n")}
</svg>
`;
}

function panel(
  predictions: readonly Predicted[],
  { outcome, stages, left }: { readonly outcome: Outcome; readonly stages: Stages; readonly left: number },
): string {
  const curves = WAYS.map((way) => ({
    way,
    errors: stages.map(
      ([from, to]) =>
        summary(predictions.filter((each) => each.way === way && each.logged >= from && each.logged <= to)).error,
    ),
  }));
  const most = 1.1 * Math.max(...curves.flatMap(({ errors }) => errors));
  const x = (i: number): string => (left + 12 + (i * (WIDE - 24)) / (stages.length - 1)).toFixed(1);
  const y = (error: number): string => (TOP + HIGH * (1 - error / most)).toFixed(1);
  const lines = curves.map(
    ({ way, errors }) =>
      `<polyline stroke-dasharray="${DASHES[way]}" points="${errors.map((error, i) => `${x(i)},${y(error)}`).join(" ")}"/>`,
  );
  const below = stages.map(([from, to], i) => {
    const words = from === to ? String(from) : `${String(from)}–${String(to)}`;
    return `<text x="${x(i)}" y="${String(TOP + HIGH + 18)}" text-anchor="middle">${words}</text>`;
  });
  const top = most / 1.1;
  const beside = [0, top / 2, top].map(
    (error) => `<text x="${String(left - 4)}" y="${y(error)}" text-anchor="end">${error.toPrecision(2)}</text>`,
  );
  return [
    `<text x="${String(left)}" y="${String(TOP - 12)}">${TITLES[outcome]}</text>`,
    `<line class="axis" x1="${String(left)}" x2="${String(left)}" y1="${String(TOP)}" y2="${String(TOP + HIGH)}"/>`,
    `<line class="axis" x1="${String(left)}" x2="${String(left + WIDE)}" y1="${String(TOP + HIGH)}" y2="${String(TOP + HIGH)}"/>`,
    ...lines,
    ...below,
    ...beside,
    `<text x="${String(left + WIDE / 2)}" y="${String(TOP + HIGH + 36)}" text-anchor="middle">brews logged on this kettle</text>`,
  ].join("\n");
}
