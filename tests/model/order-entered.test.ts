import { describe, expect, it } from "vitest";
import { csvText } from "@/lib/model/csv";
import { countedUnit, entryMeasure, THINGS_TO_ASK_FOR } from "@/lib/model/order/entered";
import type { OrderItem } from "@/lib/model/order/order";
import { newThing, unitsOf } from "@/lib/model/order/order-input";
import { orderRows } from "@/lib/model/order/order-rows";

describe("entryMeasure", () => {
  it("types malt by the kilogram and everything else in the unit of the order", () => {
    expect(entryMeasure({ kind: "fermentable", unit: "g" })).toBe("kg");
    expect(entryMeasure({ kind: "hop", unit: "g" })).toBe("g");
    expect(entryMeasure({ kind: "acid", unit: "mL" })).toBe("mL");
  });

  it("asks for each thing in a measure that the order counts it in", () => {
    for (const { kind, measure } of THINGS_TO_ASK_FOR) expect(unitsOf(kind)).toContain(countedUnit(measure));
  });
});

describe("newThing", () => {
  const thing = { orderId: "2f8b6c9e-7c3e-4f8e-9a3e-1d2c3b4a5f60", kind: "hop", name: "Hop", unit: "g", amount: 100 };

  it("takes each kind in the unit in which sheets count it", () => {
    expect(newThing.safeParse(thing).success).toBe(true);
    expect(newThing.safeParse({ ...thing, unit: "pcs" }).error?.issues[0]?.message).toBe(
      "Unit of this kind is one of: g",
    );
    expect(newThing.safeParse({ ...thing, kind: "other", unit: "pcs" }).success).toBe(true);
  });

  it.each([0, -1, 0.5, 5_000_001, Number.NaN])("refuses an amount of %d", (amount) => {
    expect(newThing.safeParse({ ...thing, amount }).success).toBe(false);
  });
});

describe("an order as CSV", () => {
  const share = {
    userId: "1",
    sources: [],
    needed: 0,
    onHand: 0,
    wanted: 5000,
    extra: 0,
    amount: 5000,
    lockVersion: 0,
  };
  const item: OrderItem = {
    ...{ id: "1", kind: "other", name: '=HYPERLINK("http://elsewhere.example")', unit: "pcs", cellsPerPiece: null },
    offers: [{ id: "1", size: 1000, priceMinor: 450, note: "", lockVersion: 1 }],
    shares: [{ ...share, userName: "@SUM(A1:A9)", cost: 2250, alone: 2250, allotted: null, handed: null, lotId: null }],
    ...{ amount: 5000, purchase: { counts: [5], cost: 2250, amount: 5000, leftOver: 0 }, alone: 2250 },
    ...{ leftOverTo: null, received: null, paid: null, lockVersion: 1 },
  };

  it("has a line for each item and member, with amounts and cost as numbers", () => {
    const [, line] = orderRows({ items: [{ ...item, name: "Caps" }], currency: "EUR" });
    expect(line?.slice(0, 12)).toEqual([
      "other",
      "Caps",
      "pcs",
      "@SUM(A1:A9)",
      0,
      0,
      5000,
      0,
      5000,
      "5 × 1000 pcs",
      "22.50",
      "EUR",
    ]);
  });

  it("is run by no spreadsheet: names that begin like a formula do not", () => {
    const text = csvText(orderRows({ items: [item], currency: "EUR" }));
    const cells = text.split("\r\n")[1]?.split(",") ?? [];
    expect(cells[1]).toMatch(/^"'=HYPERLINK/);
    expect(cells[3]).toBe("'@SUM(A1:A9)");
    for (const cell of cells) expect(cell).not.toMatch(/^"?[=+\-@\t\r]/);
  });
});
