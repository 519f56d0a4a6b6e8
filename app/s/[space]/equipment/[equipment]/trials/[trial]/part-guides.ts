import { CAUTIONS } from "@/lib/calc/runsheet";
import type { TrialPart } from "@/lib/model/trial/trial-entry";

/** What to do in a part of the trial, in plain words. Common practice, no source. */
export interface PartGuide {
  readonly title: string;
  /** Which figures it tells. */
  readonly tells: string;
  readonly ready: string;
  readonly steps: readonly string[];
  readonly cautions: readonly string[];
  readonly reading: string;
  /** The button of the form for one reading. */
  readonly save: string;
}

const LIFTING =
  "A full kettle is heavy: fill it where it stands, and never lift or tilt it with hot water in it. Two people lift what one cannot hold with straight arms.";

/** Every part; numbers are typed in the reader's units, so the texts have none but times. */
export const PART_GUIDES: Readonly<Record<TrialPart, PartGuide>> = {
  marks: {
    title: "Volume marks",
    tells: "Which depth or mark stands for how much.",
    ready:
      "A jug whose litres you trust (weigh it full once: a litre of cold water is a kilogram), a stick or a sight glass.",
    steps: [
      "Begin with the kettle empty, cold and level, the heater off and unplugged.",
      "Pour in a measured amount, wait until it is still, and read where it stands. Type both and save.",
      "Go on to what you usually boil. Where the bottom is round, pour little at a time; upright walls need few marks.",
    ],
    cautions: [LIFTING],
    reading: "A jug more",
    save: "Save this mark",
  },
  heating: {
    title: "Heat-up",
    tells: "How much of the heater’s power reaches the water, and what the walls lose.",
    ready:
      "Cold water, about what you usually boil, measured; a thermometer; something to stir with. Half an hour to two hours.",
    steps: [
      "Fill in the water first, and check that it covers the element. Put the lid on as you do when you brew.",
      "Switch to full power. Stir, read and save at once, then again about every five minutes: stir each time before you read.",
      "Go on until just below the boil: the bend of the curve near the top is what tells power and losses apart.",
      "Do it again with a quite different amount of water if you also want the heat capacity of the kettle.",
    ],
    cautions: [CAUTIONS["hot liquor"]],
    reading: "Temperature now",
    save: "Save it, read now",
  },
  cooling: {
    title: "Cooling with the heater off",
    tells: "What the walls lose, best of all parts.",
    ready: "The hot kettle after the heat-up, with its lid on. An hour or more; read every quarter of an hour.",
    steps: [
      "Switch the heater off and unplug it. Leave the lid on.",
      "Stir through the gap under the lid, read and save. Then every fifteen minutes.",
    ],
    cautions: [CAUTIONS["hot liquor"]],
    reading: "Temperature now",
    save: "Save it, read now",
  },
  "boil-off": {
    title: "Boil-off",
    tells: "How much a boil evaporates in an hour.",
    ready: "Water at a rolling boil, lid off, at the power that you boil with. An hour tells well.",
    steps: [
      "When it boils as it does on a brew day, read the volume and save. Then every twenty minutes.",
      "Or read cold before and after: then type the temperature at which you read.",
      "Keep the element covered: stop in time.",
    ],
    cautions: [CAUTIONS["boil-over"], CAUTIONS["hot liquor"]],
    reading: "Volume now",
    save: "Save it, read now",
  },
  "dead space": {
    title: "Dead space",
    tells: "What stays behind when the vessel has run empty.",
    ready: "A jug, and cold water: nobody needs hot water for this.",
    steps: [
      "Let the water run out by the tap as on a brew day, until it stops by itself.",
      "Tip out or bail out what is left into the jug, read and save. For chiller, pump and hoses, empty those.",
      "Twice is better than once: it shows how alike two times are.",
    ],
    cautions: [LIFTING],
    reading: "What was left",
    save: "Save it",
  },
  chill: {
    title: "Chill",
    tells: "How well the chiller passes heat.",
    ready: "Hot water in the kettle, the chiller with its water, a thermometer, a bucket and a watch for the flow.",
    steps: [
      "Measure the flow and the temperature of the cooling water, and fill in the first form.",
      "Heater off. Open the water, stir as on a brew day, read and save at once; then every two or three minutes.",
      "Stop when it hardly falls any more.",
    ],
    cautions: [CAUTIONS["hot liquor"]],
    reading: "Temperature now",
    save: "Save it, read now",
  },
};

/** A counterflow chiller is read once the water runs steadily. */
export const COUNTERFLOW_STEPS: readonly string[] = [
  "Fix every hose. Heater off. Let hot water run through the chiller into a bucket until what comes out is steady.",
  "Then catch what runs through for some minutes, and read all the numbers below in that time.",
];
