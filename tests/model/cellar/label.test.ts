import jsQR from "jsqr";
import { encode } from "uqr";
import { describe, expect, it } from "vitest";
import { allergenProposal } from "@/lib/model/cellar/label";

describe("allergenProposal", () => {
  const malt = (name: string) => ({ name, kind: "malt" as const });

  it("names the cereals with gluten, barley where a malt names no other", () => {
    expect(allergenProposal([malt("Pale ale malt"), malt("Wheat malt"), malt("Rye malt")])).toBe(
      "Contains barley, rye, wheat (gluten).",
    );
    expect(allergenProposal([malt("Wheat malt")])).toBe("Contains wheat (gluten).");
  });

  it("leaves out what has none, and names milk where there is lactose", () => {
    const sugar = { name: "Lactose", kind: "sugar" as const };
    expect(allergenProposal([{ name: "Rice flakes", kind: "adjunct" }])).toBe("");
    expect(allergenProposal([malt("Pale ale malt"), sugar])).toBe("Contains barley (gluten), milk.");
  });
});

describe("the codes on labels", () => {
  it("are read by another program than the one that wrote them", () => {
    const address = "https://club.example/s/hollowmere/brews/68652a1a-c40f-494d-b15b-88643781cd75";
    const { data, size } = encode(address, { ecc: "M", border: 4 });
    const scale = 4;
    const side = size * scale;
    const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
    for (let y = 0; y < side; y++) {
      for (let x = 0; x < side; x++) {
        if (data[Math.floor(y / scale)]?.[Math.floor(x / scale)] === true)
          pixels.fill(0, (y * side + x) * 4, (y * side + x) * 4 + 3);
      }
    }
    expect(jsQR(pixels, side, side)?.data).toBe(address);
  });
});
