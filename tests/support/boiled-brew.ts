import { randomUUID } from "node:crypto";
import { expect } from "vitest";
import { moveBrew } from "@/lib/server/brews/move";
import { findBrew } from "@/lib/server/brews/reads";
import { storeEvents } from "@/lib/server/log/ingest";
import type { Member } from "@/lib/server/session";
import { newBrewing } from "./brewing";
import { gravityOf } from "./cellar";
import { newClub } from "./club";

/** The readings of a brew that boiled off two litres more than its plan says. */
export async function logBoil(member: Member, brewId: string): Promise<void> {
  const brew = await findBrew(member, brewId);
  if (brew === null) throw new Error("the test's own set-up failed");
  const planned = (quantity: keyof typeof brew.predicted): number => brew.predicted[quantity]?.value ?? NaN;
  const read = (quantity: string, kind: string, value: number) =>
    gravityOf(brewId, 0, value, {
      id: randomUUID(),
      kind,
      quantity,
      instrument: "other",
      sd: kind === "volume" ? 0.3 : 0.25,
    });
  const { lockVersion } = brew;
  expect(await moveBrew(member, { id: brewId, lockVersion, state: "on the kettle" })).toMatchObject({ ok: true });
  const events = [
    read("kettle.preBoil", "volume", planned("kettle.preBoil")),
    read("kettle.preBoilGravity", "gravity", planned("kettle.preBoilGravity")),
    read("kettle.postBoil", "volume", planned("kettle.postBoil") - 2),
  ];
  const fates = await storeEvents(
    member,
    events.map((event) => ({ event, actorId: member.userId, sentAt: null, clockOffsetMs: null })),
  );
  expect(fates.map(({ fate }) => fate)).toEqual(["stored", "stored", "stored"]);
}

/** A club whose member has brewed once, and boiled off more than planned. */
export async function clubThatBrewed() {
  const club = await newClub("member");
  const brewing = await newBrewing(club.organiser, club.member);
  await logBoil(club.member, brewing.brewId);
  return { ...club, ...brewing };
}
