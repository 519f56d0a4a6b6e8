import { USUAL_SD } from "@/lib/model/trial/trial-fields";
import type { TrialEntry, TrialPart } from "@/lib/model/trial/trial-entry";
import type { FormValues } from "./form-shape";

interface Made {
  readonly id: string;
  readonly run: number;
  readonly occurredAt: string;
  readonly replaces: string | null;
}

/** Reads the numbers of a form that has been read already. */
class Values {
  constructor(private readonly values: FormValues) {}

  number(name: string): number {
    const value = this.values[name];
    if (typeof value !== "number") throw new Error(`the form has no number ${name}`);
    return value;
  }

  word(name: string): string {
    return String(this.values[name] ?? "");
  }

  // A share in per cent of a volume or flow, as a standard uncertainty.
  sdOf(name: string, share: string, least: number): number {
    return Math.max(least, (this.number(share) / 100) * this.number(name));
  }
}

/** What somebody stated, as the entry that `trialEntry` reads. */
export function conditionsEntry(part: TrialPart, made: Made, values: FormValues): object {
  return { ...made, part, kind: "conditions", payload: conditions(part, new Values(values)) };
}

function conditions(part: TrialPart, v: Values): object {
  if (part === "dead space") return { where: v.word("where") };
  if (part === "marks") return { unit: v.word("unit") };
  const water = {
    litres: v.number("litres"),
    litresSd: v.sdOf("litres", "litresShare", USUAL_SD.leastLitres),
    waterC: v.number("waterC"),
    airC: v.number("airC"),
  };
  if (part !== "chill") return { ...water, lid: v.word("lid") === "on", humidity: v.number("humidity") };
  return {
    ...water,
    coolantC: v.number("coolantC"),
    coolantSd: v.number("coolantSd"),
    flow: v.number("flow"),
    flowSd: v.sdOf("flow", "flowShare", 0.01),
  };
}

/** What somebody read. */
export function readingEntry(part: TrialPart, made: Made, values: FormValues, isCounterflow: boolean): object {
  const v = new Values(values);
  if (part === "boil-off" || part === "dead space") {
    const payload = { celsius: v.number("waterC"), sd: v.sdOf("litres", "litresShare", USUAL_SD.leastLitres) };
    return { ...made, part, kind: "volume", value: v.number("litres"), payload };
  }
  if (part === "marks") {
    const payload = {
      litres: v.number("poured"),
      sd: v.sdOf("poured", "litresShare", 0.001),
      readingSd: v.number("readingSd"),
    };
    return { ...made, part, kind: "mark", value: v.number("reading"), payload };
  }
  if (part === "chill" && isCounterflow) {
    const payload = {
      sd: v.number("sd"),
      hotC: v.number("hotC"),
      litres: v.number("litres"),
      litresSd: v.sdOf("litres", "litresShare", USUAL_SD.leastLitres),
      minutes: v.number("minutes"),
      coolantC: v.number("coolantC"),
      flow: v.number("flow"),
      flowSd: v.sdOf("flow", "flowShare", 0.01),
    };
    return { ...made, part, kind: "through", value: v.number("outC"), payload };
  }
  return { ...made, part, kind: "temperature", value: v.number("celsius"), payload: { sd: v.number("sd") } };
}

/** The form's values of an entry that is there, so that it can be corrected. */
export function valuesOf(entry: TrialEntry): FormValues {
  switch (entry.kind) {
    case "temperature":
      return { celsius: entry.value, sd: entry.payload.sd };
    case "volume":
      return {
        litres: entry.value,
        waterC: entry.payload.celsius,
        litresShare: percent(entry.payload.sd, entry.value),
      };
    case "mark": {
      const { litres, sd, readingSd } = entry.payload;
      return { poured: litres, reading: entry.value, litresShare: percent(sd, litres), readingSd };
    }
    case "through": {
      const { litresSd, flowSd, ...p } = entry.payload;
      return { ...p, outC: entry.value, litresShare: percent(litresSd, p.litres), flowShare: percent(flowSd, p.flow) };
    }
    case "conditions":
      return conditionValues(entry);
    case "void":
      return {};
  }
}

function conditionValues(entry: TrialEntry & { readonly kind: "conditions" }): FormValues {
  if (entry.part === "dead space" || entry.part === "marks") return { ...entry.payload };
  const { litresSd, ...rest } = entry.payload;
  const share = { litresShare: percent(litresSd, rest.litres) };
  if ("lid" in rest) return { ...rest, ...share, lid: rest.lid ? "on" : "off" };
  const { flowSd, ...chill } = rest;
  return { ...chill, ...share, flowShare: percent(flowSd, chill.flow) };
}

const percent = (sd: number, of: number): number => (of > 0 ? Math.min(50, Math.max(0.01, (100 * sd) / of)) : 1);
