import { describe, expect, it } from "vitest";
import { POST } from "@/app/api/v1/readings/route";
import { readingsAnswer } from "@/lib/model/sensor/readings-answer";
import { inSpace } from "@/lib/server/db";
import type { Member } from "@/lib/server/session";
import { newBrewing } from "../../support/brewing";
import { newClub } from "../../support/club";
import { newKey, sentBy, sentReading } from "../../support/sensors";

const CSV = { "content-type": "text/csv; charset=utf-8" };
const HEADING = "brew,at,quantity,value,unit,note\n";

async function keyWithBrew() {
  const { organiser, member } = await newClub("member");
  const { brewId } = await newBrewing(organiser, member);
  return { member, brewId, token: await newKey(member) };
}

const countIn = ({ spaceId, userId }: Member) =>
  inSpace(spaceId, userId, (tx) => tx.brewEvent.count({ where: { spaceId } }));

const lineOf = (brew: string, minute: number) => {
  const { at, quantity, value, unit } = sentReading(brew, minute);
  return `${brew},${at},${quantity},${String(value)},${unit},"a, ""note"""\n`;
};

/** A request whose body is made while it is read, so that a million lines are never in one place. */
function streamed(token: string, lines: number, lineAt: (n: number) => string) {
  let n = -1;
  const body = new ReadableStream<Uint8Array>({
    pull(controller) {
      const some = Array.from({ length: 1000 }, () => (n < 0 ? (n++, HEADING) : n < lines ? lineAt(n++) : ""));
      controller.enqueue(new TextEncoder().encode(some.join("")));
      if (n >= lines) controller.close();
    },
  });
  const headers = { ...CSV, authorization: `Bearer ${token}` };
  // Node asks for this word where a body is a stream; the type of the browser's Request does not know it.
  const init = { method: "POST", headers, body, duplex: "half" } as RequestInit;
  return { request: new Request("http://localhost:3000/api/v1/readings", init), read: () => n };
}

describe("a table of readings", () => {
  it("is taken as JSON is, line by line", async () => {
    const { member, brewId, token } = await keyWithBrew();
    const text = `${HEADING}${lineOf(brewId, 0)}${lineOf(brewId, 1)}${lineOf(brewId, 0)}${brewId},never,mash.ph,5,pH,\n`;
    const answer = readingsAnswer.parse(await (await POST(sentBy(token, text, CSV), undefined)).json());
    expect(answer.results.map(({ fate }) => fate)).toEqual(["stored", "stored", "duplicate", "rejected"]);
    expect(answer.results[3]?.reason).toContain("at “never”: it takes a time with a zone");
    expect(await countIn(member)).toBe(2);
    // The same readings by the other way are known.
    const json = { readings: [sentReading(brewId, 0, { note: 'a, "note"' })] };
    expect(readingsAnswer.parse(await (await POST(sentBy(token, json), undefined)).json()).duplicate).toBe(1);
  });

  it("has ten thousand lines at most, which are one transaction", async () => {
    const { member, brewId, token } = await keyWithBrew();
    const { request } = streamed(token, 10_000, (n) => lineOf(brewId, n));
    const response = await POST(request, undefined);
    expect(response.status).toBe(200);
    expect(readingsAnswer.parse(await response.json()).stored).toBe(10_000);
    expect(await countIn(member)).toBe(10_000);
  });

  it("of a million lines is refused before it is read to its end, and nothing of it is kept", async () => {
    const { member, brewId, token } = await keyWithBrew();
    const { request, read } = streamed(token, 1_000_000, (n) => lineOf(brewId, n));
    const response = await POST(request, undefined);
    expect(response.status).toBe(413);
    expect(await response.json()).toEqual({
      message:
        "The table has too many lines: a request takes 10,000 readings and 2 MB. Nothing was kept; send it in parts.",
    });
    expect(read()).toBeLessThan(20_000);
    expect(await countIn(member)).toBe(0);
  });

  it("that says itself that it is too long is not read at all", async () => {
    const { token } = await keyWithBrew();
    const response = await POST(sentBy(token, HEADING, { ...CSV, "content-length": "90000000" }), undefined);
    expect(response.status).toBe(413);
  });

  it.each([
    ["brew,at,value,unit\n", "there is no line of readings in it"],
    ["brew,at,value,unit\nx,y,1,pH\n", "the first line names the columns, and has no quantity"],
    [`${HEADING}"never closed`, "line 2: a quote is not closed"],
    [`${HEADING}a,b,c,d,e,f,g\n`, "line 2: there are 7 cells for 6 columns"],
  ])("that is none is refused: %j", async (text, message) => {
    const { member, token } = await keyWithBrew();
    const response = await POST(sentBy(token, text, CSV), undefined);
    expect(response.status).toBe(400);
    expect(((await response.json()) as { readonly message: string }).message).toContain(message);
    expect(await countIn(member)).toBe(0);
  });
});
