import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { csvText } from "@/lib/model/csv";
import { CsvError, CsvRecords } from "@/lib/model/sensor/csv-records";
import { readHeading, readLine } from "@/lib/model/sensor/csv-readings";

/** Reads a text in pieces of so many characters. */
function read(text: string, size = text.length + 1) {
  const table = new CsvRecords();
  const records = [];
  for (let at = 0; at < text.length; at += size) records.push(...table.read(text.slice(at, at + size)));
  return [...records, ...table.end()];
}

const cellsOf = (text: string) => read(text).map(({ cells }) => cells);

describe("CsvRecords", () => {
  // The examples of RFC 4180, section 2.
  it.each([
    [
      "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n",
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      "aaa,bbb,ccc\r\nzzz,yyy,xxx",
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ["aaa", "b\r\nbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    ['"aaa","b""bb","ccc"', [["aaa", 'b"bb', "ccc"]]],
  ])("reads %j", (text, expected) => {
    expect(cellsOf(text)).toEqual(expected);
  });

  it("takes a byte order mark, bare line feeds, empty cells and blank lines", () => {
    expect(cellsOf("\uFEFFa,b\n\n,\n")).toEqual([
      ["a", "b"],
      ["", ""],
    ]);
  });

  it("says on which line a record begins", () => {
    expect(read('a\n"1\n2"\nb\n').map(({ line }) => line)).toEqual([1, 2, 4]);
  });

  it.each([
    ['a\n"b', "line 2: a quote is not closed"],
    ['"a"b', "line 1: there is something between a closing quote and the comma"],
    ["x".repeat(2001), "line 1: a cell has more than 2000 characters"],
    [",".repeat(40), "line 1: there are more than 40 columns"],
  ])("refuses %#", (text, message) => {
    expect(() => read(text)).toThrow(new CsvError(message));
  });

  it("gives back what our own tables say, wherever the pieces end", () => {
    const cell = fc.string({ maxLength: 12 }).map((text) => text.replaceAll("\0", ""));
    const harmless = cell.filter((text) => !/^[=+\-@\t\r]/.test(text) && !text.includes("\uFEFF"));
    // A line of one empty cell is a blank line.
    const table = fc.array(fc.array(harmless, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(table, fc.integer({ min: 1, max: 9 }), (rows, size) => {
        expect(read(csvText(rows), size).map(({ cells }) => cells)).toEqual(rows);
      }),
    );
  });
});

describe("the columns of a table of readings", () => {
  const heading = (text: string) => readHeading({ line: 1, cells: text.split(",") });

  it("may stand in any order, in any case", () => {
    expect(heading("Unit, value,AT,quantity")).toEqual(["unit", "value", "at", "quantity"]);
  });

  it.each([
    ["at,quantity,value", "line 1: the first line names the columns, and has no unit"],
    ["at,quantity,value,unit,at", "line 1: the column at is there twice"],
    ["at,quantity,value,unit,constructor", "line 1: “constructor” is no column; they are id, brew, at, "],
  ])("are refused: %s", (text, message) => {
    expect(() => heading(text)).toThrow(message);
  });

  it("give numbers where numbers stand, and leave out what is empty", () => {
    const columns = heading("at,quantity,value,unit,sd,note");
    const cells = ["2026-11-28T10:00:00Z", "mash.ph", "5.35", "pH", "", "5"];
    expect(readLine(columns, { line: 2, cells })).toEqual({
      ...{ at: "2026-11-28T10:00:00Z", quantity: "mash.ph", value: 5.35, unit: "pH", note: "5" },
    });
    expect(readLine(columns, { line: 3, cells: ["", "", "0x10"] })).toEqual({ value: "0x10" });
    expect(() => readLine(columns, { line: 4, cells: [...cells, "more"] })).toThrow(
      "line 4: there are 7 cells for 6 columns",
    );
  });
});
