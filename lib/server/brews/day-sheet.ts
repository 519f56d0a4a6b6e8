import "server-only";
import type { DayBrew, DaySheet } from "@/lib/model/day-sheet";
import type { Brew } from "@/lib/model/brew";
import type { Member } from "../session";
import { findBrew } from "./reads";

/** What a phone keeps of a brew, to brew from it without the server; null when there is no such brew here. */
export async function findDaySheet(member: Member, brewId: string): Promise<DaySheet | null> {
  const readAt = new Date().toISOString();
  const brew = await findBrew(member, brewId);
  if (brew === null) return null;
  return {
    space: { slug: member.spaceSlug, name: member.spaceName },
    me: { id: member.userId, name: member.displayName },
    preferences: member.preferences,
    brew: dayBrew(brew),
    entries: brew.entries,
    readAt,
  };
}

function dayBrew(brew: Brew): DayBrew {
  const { id, title, brewerName, equipmentName, state, recipe, equipment, ambient, runSheet, predicted } = brew;
  return {
    id,
    title,
    brewerName,
    equipmentName,
    state,
    recipe,
    equipment,
    ambient,
    runSheet,
    predicted,
    lockVersion: brew.lockVersion,
    mayWrite: brew.mayWrite,
    startedAt: brew.startedAt?.toISOString() ?? null,
    isDropped: brew.dropped !== null,
  };
}
