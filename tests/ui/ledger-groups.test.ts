import { describe, expect, it } from "vitest";
import { brew, QUANTITIES, STATIONS } from "@/lib/calc/ledger";
import { ledgerGroups } from "@/lib/ui/ledger-groups";
import { garageKettle, paleAle, sameDay } from "../support/brewing-fixtures";

const outcome = brew({ recipe: paleAle, equipment: garageKettle, ambient: sameDay });
if (!outcome.ok) throw new Error(outcome.reason);
const { ledger } = outcome;

describe("ledgerGroups", () => {
  it("lays the stations out in the order of the process, each with its own quantities and its balance", () => {
    const groups = ledgerGroups({ columns: [ledger], balances: ledger.balances });
    expect(groups.map(({ station }) => station)).toEqual(STATIONS);
    for (const { station, rows, balance } of groups) {
      expect(balance?.station).toBe(station);
      for (const row of rows) {
        expect(Object.values(QUANTITIES)).toContainEqual({ station, label: row.label, dimension: row.dimension });
      }
    }
  });

  it("gives every row one cell for each column", () => {
    const groups = ledgerGroups({ columns: [ledger, { quantities: { "water.total": 30 } }] });
    const total = groups.flatMap(({ rows }) => rows).find(({ id }) => id === "water.total");
    expect(total?.cells.map(({ value }) => value)).toEqual([ledger.quantities["water.total"], 30]);
    expect(groups.flatMap(({ rows }) => rows).every(({ cells }) => cells.length === 2)).toBe(true);
  });

  it("leaves out what no column has, but keeps what has a reason for being missing", () => {
    const rowsOf = (column: Parameters<typeof ledgerGroups>[0]["columns"][number]) =>
      ledgerGroups({ columns: [column] }).flatMap(({ rows }) => rows.map(({ id }) => id));
    expect(rowsOf({ quantities: { "package.volume": 19, "package.primingSugar": null } })).toEqual(["package.volume"]);
    const reasons = { "kettle.heatingTime": "the heater never gets there" };
    expect(rowsOf({ quantities: {}, reasons })).toEqual(["kettle.heatingTime"]);
  });

  it("shows only the quantities asked for", () => {
    const only = new Set(["mash.grist", "day.time"] as const);
    const groups = ledgerGroups({ columns: [ledger], only });
    expect(groups.map(({ station }) => station)).toEqual(["mash", "package"]);
  });
});
