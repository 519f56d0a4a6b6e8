import { describe, expect, it } from "vitest";
import type { CsvChoices } from "@/lib/model/cellar/csv/columns";
import { findBrew } from "@/lib/server/brews/reads";
import { readingsOf } from "@/lib/server/summaries/readings-of";
import { importReadings } from "@/lib/server/cellar/import-readings";
import type { Member } from "@/lib/server/session";
import { newFermentation, onDay } from "../../support/cellar";
import { join, newClub } from "../../support/club";

const CHOICES: CsvChoices = {
  time: 0,
  zone: "Europe/London",
  values: [
    { column: 1, unit: "gravity sg" },
    { column: 2, unit: "temperature c" },
  ],
  leaveOut: false,
};

const FILE = [
  "Time,SG,Temp",
  "2026-03-02 08:00,1.044,18.9",
  "2026-03-02 08:15,1.0435,19.1",
  "2026-03-02 08:30,,19.2",
].join("\r\n");

async function fermentation() {
  const { member, judge, organiser } = await newClub("member", "judge");
  return { member, judge, organiser, brewId: await newFermentation(member, {}) };
}

const kept = async (member: Member, brewId: string) =>
  (await findBrew(member, brewId))?.log.readings.map(({ measured, at }) => ({ ...measured, at })) ?? [];

describe("importReadings", () => {
  it("takes every reading of the file once, in the log's units", async () => {
    const { member, brewId } = await fermentation();
    const taken = await importReadings(member, { brewId, text: FILE, choices: CHOICES });
    expect(taken).toEqual({ added: 5, known: 0, leftOut: 0 });
    const readings = await kept(member, brewId);
    // 11.0 °P is 1.0442 and 10.9 °P is 1.0438 in the sucrose tables: NBS Circular C440 (1942), sp. gr. 20/20.
    const first = readings.find(({ quantity }) => quantity === "fermenter.gravity");
    expect(first?.value).toBeGreaterThan(10.9);
    expect(first?.value).toBeLessThan(11);
    expect(readings.filter(({ quantity }) => quantity === "fermenter.temperature").map(({ value }) => value)).toEqual([
      18.9, 19.1, 19.2,
    ]);
    expect(first?.at).toBe(Date.parse("2026-03-02T08:00:00Z"));
  });

  it("adds nothing of the same file, whoever sends it again, and only what is new of a longer one", async () => {
    const { member, organiser, brewId } = await fermentation();
    await importReadings(member, { brewId, text: FILE, choices: CHOICES });
    for (const who of [member, organiser]) {
      expect(await importReadings(who, { brewId, text: FILE, choices: CHOICES })).toMatchObject({ added: 0, known: 5 });
    }
    const longer = `${FILE}\r\n2026-03-02 08:45,1.043,19.2`;
    expect(await importReadings(member, { brewId, text: longer, choices: CHOICES })).toMatchObject({
      added: 2,
      known: 5,
    });
    expect(await kept(member, brewId)).toHaveLength(7);
  });

  it("takes nothing of a file with a wrong line, and names it; without that line it takes the rest", async () => {
    const { member, brewId } = await fermentation();
    const text = `${FILE}\r\nyesterday,1.042,19\r\n2026-03-02 09:00,2.042,19`;
    await expect(importReadings(member, { brewId, text, choices: CHOICES })).rejects.toThrow(
      /^Nothing was taken: line 5: Time “yesterday” is not a day.*; line 6: Gravity, SG “2.042”: specific gravity 2.042/,
    );
    expect(await kept(member, brewId)).toEqual([]);
    const taken = await importReadings(member, { brewId, text, choices: { ...CHOICES, leaveOut: true } });
    expect(taken).toEqual({ added: 5, known: 0, leftOut: 2 });
  });

  it("takes twenty thousand lines in one go and refuses a million with a word about why", async () => {
    const { member, brewId } = await fermentation();
    const lines = (count: number): string =>
      ["Time,SG", ...Array.from({ length: count }, (_, i) => `${String(onDay(0).getTime() + i * 60_000)},1.040`)].join(
        "\n",
      );
    const choices = { ...CHOICES, values: [{ column: 1, unit: "gravity sg" as const }] };
    await expect(importReadings(member, { brewId, text: lines(1_000_000), choices })).rejects.toThrow(
      "The file has more than 20,000 lines, which is the most of one file. Nothing was taken of it.",
    );
    expect(await importReadings(member, { brewId, text: lines(20_000), choices })).toMatchObject({ added: 20_000 });
    // Pages read every so-manyth of so many; the log has them all.
    expect(await readingsOf(member, brewId)).toHaveLength(20_000);
  }, 60_000);

  it("is refused to who may not write to the brew, and another club's brew is not found", async () => {
    const { judge, organiser, brewId } = await fermentation();
    const other = await join(organiser, "member");
    for (const who of [judge, other]) {
      await expect(importReadings(who, { brewId, text: FILE, choices: CHOICES })).rejects.toThrow(
        /^Only who brews this/,
      );
    }
    const { organiser: outsider } = await newClub();
    await expect(importReadings(outsider, { brewId, text: FILE, choices: CHOICES })).rejects.toThrow(
      "There is no such brew here.",
    );
  });
});
