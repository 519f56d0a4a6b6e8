import { describe, expect, it } from "vitest";
import type { Preferences } from "@/lib/model/preferences";
import { FERMENTABLE_FIELDS, HOP_FIELDS } from "@/lib/model/recipe-fields";
import { amountEcho } from "@/lib/ui/amount-echo";

const METRIC: Preferences = { units: "metric", gravity: "plato", colour: "ebc", theme: "auto" };
const US: Preferences = { units: "us", gravity: "sg", colour: "srm", theme: "auto" };
const mass = (text: string, preferences = METRIC) => amountEcho({ text, field: FERMENTABLE_FIELDS.kg, preferences });

describe("amountEcho", () => {
  // 1 lb = 0.45359237 kg by definition: 10 lb 2 oz = 10.125 lb = 4.5926… kg.
  it("says what an amount in other units comes to", () => {
    expect(mass("10 lb 2 oz")).toBe("= 4.593 kg");
    expect(mass("250 g")).toBe("= 0.25 kg");
    expect(mass("1 kg", US)).toBe("= 2.205 lb");
    expect(amountEcho({ text: "1/2 oz", field: HOP_FIELDS.grams, preferences: METRIC })).toBe("= 14.17 g");
  });

  it("says what a fraction in one's own unit comes to", () => {
    expect(mass("1 1/2 kg")).toBe("= 1.5 kg");
  });

  it.each(["4.5", "4,5", "4.5 kg", "4,5kg", "", "4.5 furlongs", "many"])("has nothing to say of “%s”", (text) => {
    expect(mass(text)).toBeNull();
  });
});
