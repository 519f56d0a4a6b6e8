import { apparentRange } from "../../alcohol";
import { COURSE_RANGE, dayOfShare, FALLEN_RANGE, fermentedShare, LOGGED_RANGE } from "../../fermentation";
import type { FunctionRecord } from "./function-record";

const ORIGINAL = 12;
const FINAL = 3;
const SHORTEST_FALL = 0.5;

/** How the functions are explained that say how far a fermentation has come. */
export const FERMENTATION_COURSE_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "fermentation/fermentedShare",
    words:
      "How far a fermentation has come: the part of its whole fall that is behind it. It leans on where the beer will end, which early on is a prediction and not a reading, so the share is as sure as that. It is no leave to bottle: only gravity that stands still is.",
    equation: "share = (original − now) / (original − final), within 0 to 1",
    inputs: [
      { at: "0.originalPlato", label: "Original extract", ...LOGGED_RANGE.original, min: FINAL + SHORTEST_FALL },
      { at: "0.nowPlato", label: "Apparent extract now", ...LOGGED_RANGE.plato },
      {
        at: "0.finalPlato",
        label: "Apparent extract where it ends",
        ...apparentRange(ORIGINAL),
        max: ORIGINAL - SHORTEST_FALL,
      },
    ],
    gives: "share of the fall, 0 to 1",
    sources: ["balling-1865"],
    validRange: "Original extract 1 to 35 °P, an end at least 0.5 °P below it.",
    call: fermentedShare,
    example: [{ originalPlato: ORIGINAL, nowPlato: 4, finalPlato: FINAL }],
  },
  {
    id: "fermentation/dayOfShare",
    words:
      "The day on which a fitted fermentation comes through a share of its fall, to plan what is done then: dry hops, a rest for diacetyl. It is the fitted curve solved for time, so it is as sure as the fit, and a change of temperature is not in it.",
    equation: "day = M + ln((1 + e^(−B M)) / (1 − share) − 1) / B",
    inputs: [
      { at: "0.ratePerDay", label: "Rate", ...COURSE_RANGE.rate },
      { at: "0.middleDay", label: "Middle", ...COURSE_RANGE.middle },
      { at: "0.share", label: "Share of the fall", ...FALLEN_RANGE },
    ],
    gives: "days since pitching",
    sources: ["speers-2003"],
    validRange: "Rates of 0.02 to 30 a day, middles from −30 to 200 days, shares up to 0.999.",
    call: dayOfShare,
    example: [{ ratePerDay: 1.5, middleDay: 2, share: 0.9 }],
  },
];
