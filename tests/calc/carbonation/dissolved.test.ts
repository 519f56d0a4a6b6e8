import { describe, expect, it } from "vitest";
import { gramsPerLitreFromVolumes, volumesFromGramsPerLitre } from "@/lib/calc/carbonation";
import { gramsPerLitre, volumesCo2 } from "@/lib/calc/units";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";

describe("gramsPerLitreFromVolumes", () => {
  it.each([
    { volumes: 0, printed: "0" },
    { volumes: 1, printed: "1.9635" },
    { volumes: 2.5, printed: "4.9087" },
    { volumes: 10, printed: "19.635" },
  ])("is $printed g/L for $volumes volumes (44.009 / 22.414, by hand)", ({ volumes, printed }) => {
    expectPrinted(gramsPerLitreFromVolumes(volumesCo2(volumes)), printed);
  });

  it("is 0.7 % less than the real gas, 1.977 g/L (CRC Handbook)", () => {
    expectWithin(1.977 / gramsPerLitreFromVolumes(volumesCo2(1)), 1.007, 0.0005);
  });

  it("refuses more than ten volumes and less than none", () => {
    expect(() => gramsPerLitreFromVolumes(10.1 as never)).toThrow(
      "carbonation 10.1 volumes is outside 0 to 10 volumes",
    );
    expect(() => gramsPerLitreFromVolumes(-1 as never)).toThrow("carbonation -1 volumes");
  });
});

describe("volumesFromGramsPerLitre", () => {
  it("is 2.547 volumes for 5 g/L (by hand)", () => {
    expectPrinted(volumesFromGramsPerLitre(gramsPerLitre(5)), "2.547");
  });

  it("is undone by gramsPerLitreFromVolumes, to the ends", () => {
    for (let volumes = 0; volumes <= 10; volumes += 0.5) {
      expectWithin(volumesFromGramsPerLitre(gramsPerLitreFromVolumes(volumesCo2(volumes))), volumes, 1e-12);
    }
  });

  it("refuses more than ten volumes of gas", () => {
    expect(() => volumesFromGramsPerLitre(gramsPerLitre(19.7))).toThrow(
      "dissolved carbon dioxide 19.7 g/L is outside 0",
    );
    expect(() => volumesFromGramsPerLitre(-0.1 as never)).toThrow("dissolved carbon dioxide -0.1 g/L");
  });
});
