import "server-only";
import { BREW_STATES, type BrewState } from "@/lib/model/brew";
import { effectiveTime } from "@/lib/model/log/log-entry";
import type { LogEvent } from "@/lib/model/log/log-event";
import type { SpaceTransaction } from "../db";
import type { NewEvent } from "./insert-events";

/** Where a brew is at least, when this has happened. */
function stateAfter(event: LogEvent): BrewState | null {
  if (event.kind === "step" && (event.act === "begun" || event.act === "done")) {
    return event.step.startsWith("pitch-") && event.act === "done" ? "in the fermenter" : "on the kettle";
  }
  if (event.kind === "pitch") return "in the fermenter";
  return event.kind === "package" ? "in package" : null;
}

/**
 * Moves brews on by what was logged at them: the first step starts the day, pitching ends it at the kettle, packaging in
 * the fermenter. Never back, for a late delivery tells of what was before; going back is a person's decision.
 */
export async function advanceBrews(tx: SpaceTransaction, spaceId: string, events: readonly NewEvent[]): Promise<void> {
  const reached = new Map<string, { readonly state: BrewState; readonly at: number }>();
  for (const made of events) {
    const { event } = made;
    const state = stateAfter(event);
    if (state === null) continue;
    const at = effectiveTime(made);
    const before = reached.get(event.brewId);
    const isFurther = before === undefined || BREW_STATES.indexOf(state) > BREW_STATES.indexOf(before.state);
    reached.set(event.brewId, {
      state: isFurther ? state : before.state,
      at: Math.min(at, before?.at ?? at),
    });
  }
  for (const [id, { state, at }] of reached) {
    const earlier = BREW_STATES.slice(0, BREW_STATES.indexOf(state));
    await tx.$executeRaw`
      UPDATE brew SET state = ${state}, started_at = COALESCE(started_at, ${new Date(at)}), lock_version = lock_version + 1
      WHERE space_id = ${spaceId}::uuid AND id = ${id}::uuid AND state = ANY (${earlier}) AND dropped_at IS NULL`;
  }
}
