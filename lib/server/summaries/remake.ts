import "server-only";
import { NOBODY } from "../nobody";
import { ambientInput } from "@/lib/model/ambient";
import { equipmentInput } from "@/lib/model/equipment";
import { brewReadings } from "@/lib/model/log/brew-readings";
import { projectLog } from "@/lib/model/log/project-log";
import { recipeInput } from "@/lib/model/recipe-content";
import { summariseBrew } from "@/lib/model/summary/summarise-brew";
import { plannedColumns } from "../brews/from-row";
import { inSpace, type SpaceTransaction } from "../db";
import { eventsRead } from "../log/dense-logs";
import { toEntries } from "../log/entries";
import { EVENT_COLUMNS } from "../log/event-row";
import { MADE_WITH } from "./made-with";

type Made = ReturnType<typeof summariseBrew>;

const COLUMNS = {
  id: true,
  recipe: true,
  equipmentSnapshot: true,
  ambient: true,
  runSheet: true,
  predicted: true,
  startedAt: true,
} as const;

/** How others who make summaries at the same moment are met. */
interface Company {
  /** Passes over a brew that somebody else is at, or has just made, instead of waiting for them. */
  readonly isShared: boolean;
}

/**
 * Makes the summary of a brew anew and keeps it; whether it did. Any number of processes may do so at once: what is kept never goes back,
 * and whatever is written meanwhile leaves it stale.
 */
export function remakeSummary(
  spaceId: string,
  brewId: string,
  { isShared }: Company = { isShared: false },
): Promise<boolean> {
  return inSpace(spaceId, NOBODY, async (tx) => {
    const rev = isShared ? await freeRevision(tx, spaceId, brewId) : await nextRevision(tx, spaceId, brewId);
    if (rev === null) return false;
    // Before the log is read: then what is made holds at least all that these marks stand for.
    const marks = await tx.brewMark.findMany({ where: { spaceId, brewId }, select: { id: true } });
    const made = await makeSummary(tx, spaceId, brewId);
    if (made === null) return false;
    await keepSummary(tx, { spaceId, brewId, rev, made });
    await tx.brewMark.deleteMany({ where: { spaceId, brewId, id: { in: marks.map(({ id }) => id) } } });
    return true;
  });
}

/** Keeps what was made, unless something later is kept already. */
export async function keepSummary(
  tx: SpaceTransaction,
  a: { readonly spaceId: string; readonly brewId: string; readonly rev: bigint; readonly made: Made },
): Promise<void> {
  const { summary, curves, evidence } = a.made;
  await tx.$executeRaw`
    UPDATE brew_summary
    SET summary = ${JSON.stringify(summary)}::jsonb, curves = ${JSON.stringify(curves)}::jsonb,
        evidence = ${evidence === null ? null : JSON.stringify(evidence)}::jsonb,
        calc_version = ${MADE_WITH}, made_rev = ${a.rev}, made_at = now()
    WHERE space_id = ${a.spaceId}::uuid AND brew_id = ${a.brewId}::uuid AND made_rev < ${a.rev}`;
}

/** What a brew comes to by what is in the database now; null where there is no such brew. */
export async function makeSummary(tx: SpaceTransaction, spaceId: string, brewId: string): Promise<Made | null> {
  const { where } = await eventsRead(tx, spaceId, [brewId]);
  const row = await tx.brew.findUnique({
    where: { spaceId_id: { spaceId, id: brewId } },
    select: { ...COLUMNS, events: { select: EVENT_COLUMNS, where } },
  });
  if (row === null) return null;
  // No name is shown, so none is looked up.
  const entries = toEntries(row.events, () => "");
  const log = projectLog(entries);
  return summariseBrew({
    id: brewId,
    recipe: recipeInput.parse(row.recipe),
    equipment: equipmentInput.parse(row.equipmentSnapshot),
    ambient: ambientInput.parse(row.ambient),
    predicted: plannedColumns.parse(row).predicted,
    startedAt: row.startedAt,
    ...{ entries, log },
    readings: brewReadings(brewId, log.readings),
  });
}

/**
 * The number of the summary that is made now; null where there is no such brew. Until it is kept nobody else makes one, so
 * that what was made earlier never takes the place of what was made later; those who write do not wait.
 */
async function nextRevision(tx: SpaceTransaction, spaceId: string, brewId: string): Promise<bigint | null> {
  await ensureRow(tx, spaceId, brewId);
  const [found] = await tx.$queryRaw<{ rev: bigint }[]>`
    SELECT made_rev + 1 AS rev FROM brew_summary
    WHERE space_id = ${spaceId}::uuid AND brew_id = ${brewId}::uuid FOR UPDATE`;
  return found?.rev ?? null;
}

/** The same, and null as well where somebody else is making it, or has since it was found stale. */
async function freeRevision(tx: SpaceTransaction, spaceId: string, brewId: string): Promise<bigint | null> {
  await ensureRow(tx, spaceId, brewId);
  const [found] = await tx.$queryRaw<{ rev: bigint }[]>`
    SELECT s.made_rev + 1 AS rev FROM brew_summary s
    WHERE s.space_id = ${spaceId}::uuid AND s.brew_id = ${brewId}::uuid
      AND (s.calc_version IS DISTINCT FROM ${MADE_WITH}
           OR EXISTS (SELECT FROM brew_mark m WHERE m.space_id = s.space_id AND m.brew_id = s.brew_id))
    FOR UPDATE OF s SKIP LOCKED`;
  return found?.rev ?? null;
}

async function ensureRow(tx: SpaceTransaction, spaceId: string, brewId: string): Promise<void> {
  await tx.$executeRaw`
    INSERT INTO brew_summary (space_id, brew_id)
    SELECT space_id, id FROM brew WHERE space_id = ${spaceId}::uuid AND id = ${brewId}::uuid
    ON CONFLICT DO NOTHING`;
}
