import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { newSensorKey } from "@/lib/model/sensor/sensor-token";
import { directory } from "@/lib/server/db";
import { listSensorKeys, makeSensorKey, revokeSensorKey } from "@/lib/server/sensors/tokens";
import { proveSensor } from "@/lib/server/session";
import { tokenHash } from "@/lib/server/tokens";
import { newBrewing } from "../../support/brewing";
import { join, newClub } from "../../support/club";
import { newKey } from "../../support/sensors";
import { connectAs } from "../../support/sql-session";

const probe = { name: "Probe", brewId: null, days: 30 };

describe("a key of a sensor", () => {
  it("acts for the member who made it, and for the brew it is for", async () => {
    const { organiser, member } = await newClub("member");
    const { brewId } = await newBrewing(organiser, member);
    expect(await proveSensor(await newKey(member))).toMatchObject({ brewId: null, member: { userId: member.userId } });
    const sender = await proveSensor(await newKey(member, brewId));
    expect(sender).toMatchObject({ brewId, member: { spaceId: member.spaceId, role: "member" } });
  });

  it("is kept as a hash, and altered it is none", async () => {
    const { member } = await newClub("member");
    const token = await newKey(member);
    const rows = await directory.sensorToken.findMany({ where: { userId: member.userId } });
    expect(rows.map((row) => Buffer.from(row.tokenHash))).toEqual([Buffer.from(tokenHash(token))]);
    expect(JSON.stringify(rows)).not.toContain(token.slice(5));
    const altered = `${token.slice(0, -1)}${token.endsWith("A") ? "B" : "A"}`;
    for (const wrong of [altered, token.slice(5), token.toUpperCase(), ""]) expect(await proveSensor(wrong)).toBeNull();
  });

  it("ends when it is revoked, with its time, the membership and the account", async () => {
    const { member } = await newClub("member");
    const token = await newKey(member);
    const [key] = await listSensorKeys(member);
    await revokeSensorKey(member, key?.id ?? "");
    expect(await proveSensor(token)).toBeNull();
    await expect(revokeSensorKey(member, key?.id ?? "")).rejects.toThrow("There is no such key");

    const second = await newKey(member);
    const owner = await connectAs("owner");
    const older = "created_at = created_at - interval '40 days', expires_at = expires_at - interval '40 days'";
    await owner.query(`UPDATE sensor_token SET ${older} WHERE token_hash = $1`, [Buffer.from(tokenHash(second))]);
    await owner.end();
    expect(await proveSensor(second)).toBeNull();

    const third = await newKey(member);
    const { spaceId, userId } = member;
    const membership = { where: { spaceId_userId: { spaceId, userId } } };
    await directory.membership.update({ ...membership, data: { status: "left" } });
    expect(await proveSensor(third)).toBeNull();
    await directory.membership.update({ ...membership, data: { status: "active", role: "judge" } });
    expect(await proveSensor(third)).toMatchObject({ member: { role: "judge" } });
    await directory.appUser.update({ where: { id: userId }, data: { disabledAt: new Date() } });
    expect(await proveSensor(third)).toBeNull();
  });

  it("never comes back once it is revoked, nor becomes another one, even for the program itself", async () => {
    const { member } = await newClub("member");
    await newKey(member);
    const [key] = await listSensorKeys(member);
    await revokeSensorKey(member, key?.id ?? "");
    const app = await connectAs("gyle_app");
    await expect(app.query("UPDATE sensor_token SET revoked_at = NULL WHERE id = $1", [key?.id])).rejects.toThrow(
      "this key was revoked",
    );
    await expect(app.query("UPDATE sensor_token SET brew_id = NULL WHERE id = $1", [key?.id])).rejects.toThrow(
      "permission denied",
    );
    await app.end();
  });

  it("is made only by whoever brews, and for a brew that they write to", async () => {
    const { organiser, member, judge } = await newClub("member", "judge");
    const { brewId } = await newBrewing(organiser, member);
    await expect(makeSensorKey(judge, probe)).rejects.toThrow("Only members and organisers brew here.");
    const other = await join(organiser, "member");
    await expect(makeSensorKey(other, { ...probe, brewId })).rejects.toThrow("Only who brews this");
    const { organiser: outsider } = await newClub();
    for (const foreign of [brewId, randomUUID()]) {
      await expect(makeSensorKey(outsider, { ...probe, brewId: foreign })).rejects.toThrow(
        "There is no such brew here.",
      );
    }
    expect(await directory.sensorToken.count({ where: { userId: { in: [judge.userId, other.userId] } } })).toBe(0);
  });

  it("is one of twenty at most, also when many are made at once", async () => {
    const { member } = await newClub("member");
    const made = await Promise.allSettled(Array.from({ length: 24 }, () => makeSensorKey(member, probe)));
    expect(made.filter(({ status }) => status === "fulfilled")).toHaveLength(20);
    await expect(makeSensorKey(member, probe)).rejects.toThrow("You have 20 keys here, which is the most");
  });

  it("is seen and revoked by its owner alone", async () => {
    const { organiser, member } = await newClub("member");
    const token = await newKey(member);
    const [key] = await listSensorKeys(member);
    expect(await listSensorKeys(organiser)).toEqual([]);
    await expect(revokeSensorKey(organiser, key?.id ?? "")).rejects.toThrow("There is no such key");
    expect(await proveSensor(token)).not.toBeNull();
    expect((await listSensorKeys(member))[0]?.lastUsedAt).toBeInstanceOf(Date);
  });
});

describe("the form of a new key", () => {
  it.each([
    [{ name: "" }, "Name of the sensor is empty"],
    [{ days: "401" }, "Days until it expires 401 is outside 1 to 400"],
    [{ brewId: "mine" }, "This is not the identifier of a record"],
  ])("refuses %j", (change, message) => {
    const parsed = newSensorKey.safeParse({ name: "Probe", brewId: "", days: "30", ...change });
    expect(parsed.error?.issues[0]?.message).toContain(message);
  });
});
