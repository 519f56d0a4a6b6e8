import { describe, expect, it } from "vitest";
import { celsius, litres } from "@/lib/calc/units";
import { counted, measured } from "@/lib/model/measured";

const kettleVolume = measured("Kettle volume", litres, { min: 0.5, max: 2000 });

function refusal(value: unknown, schema: typeof kettleVolume = kettleVolume): string | undefined {
  return schema.safeParse(value).error?.issues[0]?.message;
}

describe("measured", () => {
  it.each([
    ["a number", 25, 25],
    ["a text from a form", "25.5", 25.5],
    ["a text with blanks around it", "  25 ", 25],
    ["the lowest value", 0.5, 0.5],
    ["the highest value", "2000", 2000],
    ["an exponent", "2.5e1", 25],
    ["a decimal comma", "25,5", 25.5],
    ["a decimal comma without a digit before it", ",5", 0.5],
  ])("reads %s", (_what, value, number) => {
    expect(kettleVolume.parse(value)).toBe(number);
  });

  it.each([
    ["nothing at all", 0, "Kettle volume 0 L is outside 0.5 to 2000 L"],
    ["a negative amount", "-3", "Kettle volume -3 L is outside 0.5 to 2000 L"],
    ["an absurd amount", 1e9, "Kettle volume 1000000000 L is outside 0.5 to 2000 L"],
    ["an endless number", Infinity, "Kettle volume Infinity L is outside 0.5 to 2000 L"],
    ["an empty field", "", "Kettle volume is empty; it takes a number from 0.5 to 2000 L"],
    ["blanks", "  ", "Kettle volume is empty; it takes a number from 0.5 to 2000 L"],
    ["a missing field", undefined, "Kettle volume is empty; it takes a number from 0.5 to 2000 L"],
    ["null", null, "Kettle volume is empty; it takes a number from 0.5 to 2000 L"],
    ["a word", "plenty", "Kettle volume “plenty” is not a number; it takes 0.5 to 2000 L"],
    ["a number with thousands set apart", "1,000.5", "Kettle volume “1,000.5” is not a number; it takes 0.5 to 2000 L"],
    ["two commas", "1,0,0", "Kettle volume “1,0,0” is not a number; it takes 0.5 to 2000 L"],
    ["hexadecimal", "0x10", "Kettle volume “0x10” is not a number; it takes 0.5 to 2000 L"],
    ["NaN", NaN, "Kettle volume of type number is not a number; it takes 0.5 to 2000 L"],
    ["a list", [5], "Kettle volume of type object is not a number; it takes 0.5 to 2000 L"],
    ["yes", true, "Kettle volume of type boolean is not a number; it takes 0.5 to 2000 L"],
  ])("refuses %s with field, value and range", (_what, value, message) => {
    expect(refusal(value)).toBe(message);
  });

  it("takes the range of the unit when the field has none of its own", () => {
    const temperature = measured("Mash temperature", celsius);
    expect(temperature.safeParse(131).error?.issues[0]?.message).toBe(
      "Mash temperature 131 °C is outside -30 to 130 °C",
    );
  });
});

describe("counted", () => {
  it("refuses a fraction", () => {
    expect(counted("Number of uses", { min: 1, max: 9 }).safeParse("1.5").error?.issues[0]?.message).toBe(
      "Number of uses is not a whole number",
    );
  });
});
