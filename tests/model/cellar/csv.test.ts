import { describe, expect, it } from "vitest";
import { guessedChoices, type CsvChoices } from "@/lib/model/cellar/csv/columns";
import { instantIn } from "@/lib/model/cellar/csv/instant";
import { readCsvRows } from "@/lib/model/cellar/csv/rows";
import { readCsvTable } from "@/lib/model/cellar/csv/table";

const NOW = new Date("2026-12-10T12:00:00Z");

function rowsOf(text: string, choices: Partial<CsvChoices> = {}) {
  const table = readCsvTable(text);
  if (!table.ok) throw new Error(table.message);
  return readCsvRows(table.lines, { ...guessedChoices(table.header, "UTC"), ...choices }, NOW);
}

describe("readCsvTable", () => {
  it("reads quotations with separators, quotes and line ends inside (RFC 4180)", () => {
    const table = readCsvTable('a,b\r\n"x, ""y""","two\r\nlines"\r\nlast,3');
    expect(table).toEqual({
      ok: true,
      header: ["a", "b"],
      lines: [
        { line: 2, cells: ['x, "y"', "two\r\nlines"] },
        { line: 4, cells: ["last", "3"] },
      ],
    });
  });

  it("finds semicolons and tabs by the heading, and passes over a byte order mark and empty lines", () => {
    for (const separator of [";", "\t"]) {
      const table = readCsvTable(`\uFEFFtime${separator}sg\n\n1${separator}2\n`);
      expect(table).toMatchObject({ ok: true, header: ["time", "sg"], lines: [{ line: 3, cells: ["1", "2"] }] });
    }
  });

  it("refuses a file that is empty, has only a heading, or ends in a quotation", () => {
    expect(readCsvTable("")).toEqual({ ok: false, message: "The file is empty." });
    const refusal = (text: string): string => {
      const table = readCsvTable(text);
      return table.ok ? "" : table.message;
    };
    expect(refusal("time,sg\n")).toContain("no line below");
    expect(refusal('time,sg\n"1,2')).toContain("quotation");
  });

  it("takes twenty thousand lines and refuses one more", () => {
    const lines = (count: number): string => `t,sg\n${"1,2\n".repeat(count)}`;
    expect(readCsvTable(lines(20_000))).toMatchObject({ ok: true });
    expect(readCsvTable(lines(20_001))).toMatchObject({
      ok: false,
      message: "The file has more than 20,000 lines, which is the most of one file. Nothing was taken of it.",
    });
  });
});

describe("instantIn", () => {
  it.each([
    ["2026-12-04 18:30", "Europe/London", "2026-12-04T18:30:00.000Z"],
    ["2026-07-04T18:30:15", "Europe/London", "2026-07-04T17:30:15.000Z"],
    ["04/12/2026 18:30", "America/New_York", "2026-12-04T23:30:00.000Z"],
    ["4.12.2026 06:30", "Europe/Berlin", "2026-12-04T05:30:00.000Z"],
    ["2026-12-04T18:30:00+05:30", "Europe/London", "2026-12-04T13:00:00.000Z"],
    ["1764873000", "Europe/Berlin", "2025-12-04T18:30:00.000Z"],
    ["2026-12-04", "UTC", "2026-12-04T00:00:00.000Z"],
  ])("%s on a clock in %s is %s", (text, zone, iso) => {
    expect(instantIn(text, zone)?.toISOString()).toBe(iso);
  });

  it.each(["yesterday", "2026-02-30 10:00", "2026-13-01 10:00", "2026-12-04 24:10", "", "12", "2026-03-29 01:30"])(
    "“%s” is no moment in London",
    (text) => {
      expect(instantIn(text, "Europe/London")).toBeNull();
    },
  );
});

describe("readCsvRows", () => {
  it("reads every unit that a column can hold into that of the log", () => {
    const text = "Time,SG,Temp °F,psi,pH\n2026-12-04 10:00,1.0400,68,14.5038,4.6";
    const [row] = rowsOf(text);
    // 1.0400 is 9.99 °P: NBS Circular C440 (1942), sp. gr. 20/20; 68 °F is 20 °C and 14.5038 psi is 1 bar by definition.
    if (row?.ok !== true) throw new Error("not read");
    const [gravity, temperature, pressure, ph] = row.readings;
    expect(gravity?.value).toBeCloseTo(9.99, 2);
    expect(temperature?.value).toBeCloseTo(20, 9);
    expect(pressure?.value).toBeCloseTo(1, 4);
    expect(ph?.value).toBe(4.6);
    expect(ph?.entered).toBe("4.6 (pH)");
  });

  it("names what is wrong with a line: no time, the future, no number, beyond what can be", () => {
    const text = ["time,temp", "soon,20", "2027-01-01 10:00,20", "2026-12-04 10:00,warm", "2026-12-04 10:00,80"];
    const messages = rowsOf(text.join("\n")).map((row) => (row.ok ? "" : `${String(row.line)} ${row.message}`));
    expect(messages).toEqual([
      "2 Time “soon” is not a day with a time, such as 2026-12-04 18:30",
      "3 Time “2027-01-01 10:00” lies in the future",
      "4 Temperature, °C “warm” is not a number",
      "5 Temperature, °C “80” is outside -10 to 60 °C, what Temperature in the fermenter can be",
    ]);
  });

  it("leaves an empty cell out and a line without any number alone", () => {
    const [first, second] = rowsOf("time,sg,temp\n2026-12-04 10:00,,19\n2026-12-04 11:00,,");
    expect(first).toMatchObject({ ok: true, readings: [{ quantity: "fermenter.temperature", value: 19 }] });
    expect(second).toMatchObject({ ok: false, message: "No column that was chosen holds a number" });
  });
});
