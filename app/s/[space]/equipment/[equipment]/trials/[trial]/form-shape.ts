import { READING_SD_RANGE } from "@/lib/calc/learn";
import { defineQuantity } from "@/lib/calc/units";
import { measuredField, type MeasuredField } from "@/lib/model/field";
import { TRIAL_FIELDS, USUAL_SD } from "@/lib/model/trial/trial-fields";
import type { TrialPart } from "@/lib/model/trial/trial-entry";

/** A number of a form; `isDetail` ones stand behind "How sure", since they rarely change. */
export interface FormNumber {
  readonly kind: "number";
  readonly name: string;
  readonly field: MeasuredField;
  readonly hint?: string;
  /** In the library's unit; null leaves the field empty. */
  readonly start: number | null;
  readonly isDetail?: boolean;
}

export interface FormChoice {
  readonly kind: "choice";
  readonly name: string;
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly text: string }[];
  readonly start: string;
}

export type FormField = FormNumber | FormChoice;
export type FormValues = Readonly<Record<string, number | string>>;

const number = (name: string, field: MeasuredField, start: number | null, hint?: string): FormNumber => ({
  ...{ kind: "number" as const, name, field, start },
  ...(hint === undefined ? {} : { hint }),
});
const detail = (name: string, field: MeasuredField, start: number | null): FormNumber => ({
  ...number(name, field, start),
  isDetail: true,
});

const kelvins = defineQuantity("uncertainty", READING_SD_RANGE.celsius);
const THERMOMETER = measuredField("Thermometer, give or take", null, kelvins);
const SHARE = measuredField(
  "Volumes, give or take",
  null,
  defineQuantity("uncertainty", { unit: "%", min: 0.01, max: 50 }),
);
const FLOW_SHARE = { ...SHARE, label: "Flow, give or take" };
const STICK_SD = measuredField(
  "Reading of the stick, give or take",
  null,
  defineQuantity("uncertainty", { unit: "mm", min: 0, max: 500 }),
);
const MARK_SD = { ...STICK_SD, make: defineQuantity("uncertainty", { unit: "marks", min: 0, max: 500 }) };
const DEPTH = measuredField("Where the water stands", null, defineQuantity("depth", { unit: "mm", min: 0, max: 5000 }));
const MARK = { ...DEPTH, make: defineQuantity("mark", { unit: "mark", min: 0, max: 5000 }) };

const percent = (share: number): number => 100 * share;

const WATER: readonly FormField[] = [
  number("litres", TRIAL_FIELDS.water, null, "Measured in with a jug, or read from the marks."),
  number("waterC", TRIAL_FIELDS.waterC, 15, "It counts at its own temperature."),
  number("airC", TRIAL_FIELDS.air, 20, "A thermometer away from the kettle."),
  detail("litresShare", SHARE, percent(USUAL_SD.volumeShare)),
];

const HEAT_CONDITIONS: readonly FormField[] = [
  ...WATER,
  {
    kind: "choice",
    name: "lid",
    label: "Lid",
    options: [
      { value: "on", text: "On the kettle" },
      { value: "off", text: "Off" },
    ],
    start: "on",
  },
  detail("humidity", TRIAL_FIELDS.humidity, 0.5),
];

const CHILL_CONDITIONS: readonly FormField[] = [
  ...WATER,
  number("coolantC", TRIAL_FIELDS.coolant, null, "A thermometer in the running water."),
  number("flow", TRIAL_FIELDS.flow, null, "A bucket and a watch."),
  detail("coolantSd", THERMOMETER, USUAL_SD.celsius),
  detail("flowShare", FLOW_SHARE, percent(USUAL_SD.flowShare)),
];

const WHERE: FormChoice = {
  kind: "choice",
  name: "where",
  label: "Where the water stayed",
  options: [
    { value: "kettle", text: "In the kettle, below the tap" },
    { value: "transfer", text: "In chiller, pump and hoses" },
    { value: "mash", text: "Under the false bottom of the mash" },
  ],
  start: "kettle",
};

const UNIT: FormChoice = {
  kind: "choice",
  name: "unit",
  label: "How the level is read",
  options: [
    { value: "mm", text: "Depth in millimetres, from the bottom" },
    { value: "mark", text: "Numbered marks, counted upwards" },
  ],
  start: "mm",
};

/** What is stated before the readings of a run; empty where nothing has to be. */
export function conditionFields(part: TrialPart, isCounterflow: boolean): readonly FormField[] {
  switch (part) {
    case "heating":
    case "cooling":
      return HEAT_CONDITIONS;
    case "chill":
      return isCounterflow ? [] : CHILL_CONDITIONS;
    case "dead space":
      return [WHERE];
    case "marks":
      return [UNIT];
    case "boil-off":
      return [];
  }
}

const TEMPERATURE: readonly FormField[] = [
  number("celsius", TRIAL_FIELDS.celsius, null),
  detail("sd", THERMOMETER, USUAL_SD.celsius),
];

const THROUGH: readonly FormField[] = [
  number("outC", { ...TRIAL_FIELDS.celsius, label: "Cooled water on its way out" }, null),
  number("hotC", TRIAL_FIELDS.hot, null),
  number("litres", TRIAL_FIELDS.through, null),
  number("minutes", TRIAL_FIELDS.minutes, null),
  number("coolantC", TRIAL_FIELDS.coolant, null),
  number("flow", TRIAL_FIELDS.flow, null, "A bucket and a watch."),
  detail("sd", THERMOMETER, USUAL_SD.celsius),
  detail("litresShare", SHARE, percent(USUAL_SD.volumeShare)),
  detail("flowShare", FLOW_SHARE, percent(USUAL_SD.flowShare)),
];

/** What is typed with each reading. */
export function readingFields(
  part: TrialPart,
  a: { readonly isCounterflow: boolean; readonly unit: "mm" | "mark"; readonly boilC: number },
): readonly FormField[] {
  switch (part) {
    case "heating":
    case "cooling":
      return TEMPERATURE;
    case "chill":
      return a.isCounterflow ? THROUGH : TEMPERATURE;
    case "boil-off":
      return [
        number("litres", TRIAL_FIELDS.litres, null, "As the marks say, without a correction."),
        number("waterC", { ...TRIAL_FIELDS.waterC, label: "Temperature of the water" }, a.boilC),
        detail("litresShare", SHARE, percent(USUAL_SD.volumeShare)),
      ];
    case "dead space":
      return [
        number("litres", { ...TRIAL_FIELDS.litres, label: "Volume poured out" }, null),
        number("waterC", { ...TRIAL_FIELDS.waterC, label: "Temperature of the water" }, 20),
        detail("litresShare", SHARE, percent(USUAL_SD.volumeShare)),
      ];
    case "marks":
      return [
        number("poured", TRIAL_FIELDS.poured, null),
        number("reading", a.unit === "mm" ? DEPTH : MARK, null),
        detail("litresShare", SHARE, percent(USUAL_SD.volumeShare)),
        detail("readingSd", a.unit === "mm" ? STICK_SD : MARK_SD, a.unit === "mm" ? USUAL_SD.mm : USUAL_SD.mark),
      ];
  }
}
