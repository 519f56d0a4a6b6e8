import { describe, expect, it } from "vitest";
import { fieldErrors } from "@/lib/model/field-errors";
import { readingInput } from "@/lib/model/reading-input";
import { sampleReading } from "../support/sample-reading";

function messagesFor(change: object): Readonly<Record<string, string>> {
  const outcome = readingInput.safeParse({ ...sampleReading("7b0e4a3c-9d52-4f0e-8a52-0d6d1b7a1f10"), ...change });
  return outcome.success ? {} : fieldErrors(outcome.error);
}

describe("readingInput", () => {
  it("reads a good reading", () => {
    expect(messagesFor({})).toEqual({});
  });

  it.each([
    ["a negative volume", { value: -2 }, "value", "Before the boil, hot -2 L is outside 0 to 5000 L"],
    ["no value", { value: "" }, "value", "Before the boil, hot is empty; it takes a number from 0 to 5000 L"],
    ["a word", { value: "full" }, "value", "Before the boil, hot “full” is not a number; it takes 0 to 5000 L"],
    [
      "an absurd gravity",
      { quantity: "fermenter.originalExtract", value: 60 },
      "value",
      "Original extract 60 °P is outside 0 to 35 °P",
    ],
    [
      "a wort lighter than water",
      { quantity: "fermenter.originalExtract", value: -0.1 },
      "value",
      "Original extract -0.1 °P is outside 0 to 35 °P",
    ],
    [
      "a spirit",
      { quantity: "fermenter.finalExtract", value: -5.1 },
      "value",
      "Final gravity -5.1 °P is outside -5 to 35 °P",
    ],
    ["a time that is none", { occurredAt: "yesterday" }, "occurredAt", "Time of the reading is not a time"],
  ])("refuses %s", (_what, change, path, message) => {
    expect(messagesFor(change)).toEqual({ [path]: message });
  });

  it("reads beer lighter than water: 0.981 SG is −4.99 °P", () => {
    expect(messagesFor({ quantity: "fermenter.finalExtract", value: -4.99 })).toEqual({});
  });

  it("refuses what the ledger computes and nobody can measure", () => {
    expect(messagesFor({ quantity: "lauter.efficiency" }).quantity).toMatch(/^What is measured is one of: water.mash/);
  });

  it("refuses an unknown field and a missing identifier", () => {
    expect(messagesFor({ actorId: "someone" })).not.toEqual({});
    expect(messagesFor({ id: "1" })).toEqual({ id: "This is not the identifier of a record" });
  });
});
