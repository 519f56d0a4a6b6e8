import { rangeOf } from "../../compare/latest-readings";
import { brewEvidence, calibrate, driftTest, pool, type BrewEvidence } from "../../learn";
import { EVIDENCE_RANGE } from "../../learn/require-evidence";
import { EXAMPLE_BREW } from "./example-brew";
import type { FunctionInput, FunctionRecord } from "./function-record";

/** Volumes, L, and gravities, °P, of three brews of one recipe on one kettle. */
const LOGGED = [
  { preBoil: 26.2, preBoilGravity: 10.6, postBoil: 23.4, volume: 19.1, original: 11.9 },
  { preBoil: 25.9, preBoilGravity: 10.8, postBoil: 23.2, volume: 18.8, original: 12.2 },
  { preBoil: 26.4, preBoilGravity: 10.5, postBoil: 23.5, volume: 19.3, original: 11.8 },
] as const;

const readingsOf = (brew: (typeof LOGGED)[number]) =>
  [
    { quantity: "kettle.preBoil", value: brew.preBoil, sd: 0.3 },
    { quantity: "kettle.preBoilGravity", value: brew.preBoilGravity, sd: 0.25 },
    { quantity: "kettle.postBoil", value: brew.postBoil, sd: 0.3 },
    { quantity: "fermenter.volume", value: brew.volume, sd: 0.3 },
    { quantity: "fermenter.originalExtract", value: brew.original, sd: 0.25 },
  ] as const;

const BREWS = LOGGED.flatMap((brew): BrewEvidence[] => {
  const outcome = brewEvidence({ ...EXAMPLE_BREW, readings: readingsOf(brew) });
  return outcome.ok ? [outcome.evidence] : [];
});

const { equipment } = EXAMPLE_BREW;

const inEvidence = (path: string): readonly FunctionInput[] => [
  { at: `${path}.misfit`, label: "Misfit of a brew", ...EVIDENCE_RANGE.misfit },
  { at: `${path}.readings`, label: "Readings of a brew", ...EVIDENCE_RANGE.readings },
];

/** How the functions that learn from brews are explained. */
export const LEARN_BREW_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "learn/brewEvidence",
    words:
      "What the readings of one brew say of the figures of its kettle, kept as plain numbers so that brews can be added up. The ledger is made straight in the figures; malt, yeast and poured water, which are other ones with each brew, are integrated out; readings that reconciliation suspects do not count. What one brew cannot tell apart, such as conversion and what the grain keeps, stays tied together in it. It cannot tell a wrong recipe from a wrong kettle.",
    equation: "V = σ² + K Kᵀ; information Jᵀ V⁻¹ J, pull Jᵀ V⁻¹ (read − ledger), J and K changes of the ledger",
    inputs: [
      { at: "0.readings.0.value", label: "Volume before the boil", ...rangeOf("kettle.preBoil") },
      { at: "0.readings.1.value", label: "Gravity before the boil", ...rangeOf("kettle.preBoilGravity") },
    ],
    gives: "information about the figures of that brew, with their values there, and which readings were left out",
    sources: ["gelman-2013", "narasimhan-jordache-2000", "mass-balance"],
    validRange: "Gravities of wort from 0 to 35 °P; figures whose effect is near straight over their uncertainty.",
    call: brewEvidence,
    example: [{ ...EXAMPLE_BREW, readings: readingsOf(LOGGED[0]) }],
  },
  {
    id: "learn/calibrate",
    words:
      "The figures of one kettle from its brews: what the profile said and what each brew says, added up by their information. A figure is given with its error, with how far one brew is off from it, with the number of brews that tell of it and with its trend; one that no brew tells of stays as it was. Brews that are farther off than chance allows count less. It takes a kettle to be the same all along, which the drift test doubts.",
    equation: "θ = (P + Σ w Λ)⁻¹ (P θ₀ + Σ w g), Λ = (Λ₀⁻¹ + Ω)⁻¹, w = min(1, χ²₀.₉₉ / χ²)",
    inputs: inEvidence("0.brews.0"),
    gives: "figures with errors, counts and trends, the profile with them, correlations, and how each brew fits",
    sources: ["gelman-2013", "huber-1964", "johnson-kotz-1994"],
    validRange: "Up to 1000 brews.",
    call: calibrate,
    example: [{ equipment, brews: BREWS }],
  },
  {
    id: "learn/pool",
    words:
      "What kettles of one kind have in common and how much they differ, what a new kettle of the kind should start from, and each kettle drawn towards its kind as far as its own brews leave it open. Kettles of different size are compared by how far they are from what is typical of their size. Without brews a new kettle starts from the typical figures; each kettle with brews narrows them. It supposes that the kettles given are like those to come.",
    equation: "θᵢ ~ N(μ, τ²), μ ~ N(0, ½), τ ~ |N(0, ½)| in typical sd; integrated over τ",
    inputs: inEvidence("0.kettles.0.brews.0"),
    gives: "mean of the kind, sd between kettles with its interval, the profile of a new kettle, and of each kettle",
    sources: ["gelman-2013", "gelman-2006"],
    validRange: "Up to 500 kettles with up to 1000 brews each.",
    call: pool,
    example: [
      {
        start: equipment,
        kettles: [
          { typical: equipment, equipment, brews: BREWS.slice(0, 2) },
          { typical: equipment, equipment, brews: BREWS.slice(2) },
        ],
      },
    ],
  },
  {
    id: "learn/driftTest",
    words:
      "Whether a figure of a kettle is another from some brew on: a new crush, pump or whirlpool, scale on the element. Of all brews the one with the clearest difference before and after is named, with the probability of one as clear by chance, at any brew: by the errors of the readings, and for all figures together by the order of the brews as well, whichever is the more probable. Each figure is tested with the others as all brews find them, so a change shows in those it cannot be told from as well. It does not say why.",
    equation:
      "max |(behind − before) / sd| over all places; p from the chain of normal integrals, and as the share of orders with one as clear",
    inputs: inEvidence("0.brews.0"),
    gives: "for each figure the likeliest change, its size and error, and how probable it is by chance",
    sources: ["hawkins-1977", "antoch-huskova-2001", "westfall-young-1993", "gelman-2013"],
    validRange: "Up to 400 brews; figures with at least three brews that tell of them.",
    call: driftTest,
    example: [{ equipment, brews: BREWS }],
  },
];
