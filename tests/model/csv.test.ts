import { describe, expect, it } from "vitest";
import { csvText } from "@/lib/model/csv";

describe("csvText follows RFC 4180", () => {
  it("ends each record with CRLF, the last one too (rules 1 and 2)", () => {
    expect(
      csvText([
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ]),
    ).toBe("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n");
  });

  it("keeps spaces as part of a field (rule 4)", () => {
    expect(csvText([[" pale malt ", "two rows"]])).toBe(" pale malt ,two rows\r\n");
  });

  it("quotes a field with a line break, a comma or a quote (rule 6)", () => {
    expect(csvText([["aaa", "b \r\nbb", "c,cc"]])).toBe('aaa,"b \r\nbb","c,cc"\r\n');
    expect(csvText([["a\nb"], ["a\rb"]])).toBe('"a\nb"\r\n"a\rb"\r\n');
  });

  it("doubles a quote within a quoted field (rule 7)", () => {
    expect(csvText([["aaa", 'b"bb', "ccc"]])).toBe('aaa,"b""bb",ccc\r\n');
  });

  it("writes nothing for a missing cell, and a number with its decimal point", () => {
    expect(csvText([["", null, 0, -2.5, 1e-7]])).toBe(",,0,-2.5,1e-7\r\n");
  });

  it("is empty for no rows", () => {
    expect(csvText([])).toBe("");
  });
});

describe("a cell that a spreadsheet would run", () => {
  it.each(["=1+1", "+1+1", "-1+cmd|' /C calc'!A0", "@SUM(A1)", "\t=1", "- 2", "+", "-", "=", "@", "-2kg", "-1,5"])(
    "%j begins with an apostrophe",
    (text) => {
      const [written = ""] = csvText([[text]]).split("\r\n");
      const field = written.replace(/^"|"$/g, "");
      expect(field).toBe(`'${text}`);
    },
  );

  it("is quoted as well when it holds a quote, a comma or a carriage return", () => {
    expect(csvText([['=HYPERLINK("http://x.example","a")']])).toBe('"\'=HYPERLINK(""http://x.example"",""a"")"\r\n');
    expect(csvText([["\r=1"]])).toBe('"\'\r=1"\r\n');
  });

  it.each(["-2", "+2", "-0.5", "-.5", "-1e-7", "+1.5E+3"])("the number %s stays as it is", (text) => {
    expect(csvText([[text]])).toBe(`${text}\r\n`);
  });

  it("is harmless when the sign stands inside the text", () => {
    expect(csvText([["2-row = pale"]])).toBe("2-row = pale\r\n");
  });
});

describe("the byte order mark", () => {
  it("stands once, before the first cell, only when asked for", () => {
    expect(csvText([["é"]], { byteOrderMark: true })).toBe("\uFEFFé\r\n");
    expect(csvText([["é"]], { byteOrderMark: false })).toBe("é\r\n");
    expect(csvText([["é"]])).toBe("é\r\n");
  });
});
