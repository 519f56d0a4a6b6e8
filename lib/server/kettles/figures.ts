import "server-only";
import { equipmentInput } from "@/lib/model/equipment";
import type { KettleEntry, KettleToAdapt } from "@/lib/model/kettle-entry";
import { inSpace } from "../db";
import { lotFigures } from "../lots/figures";
import type { Member } from "../session";

/** How many kettles are read in one go: the server answers others in between. */
const BATCH = 100;

interface HeadRow {
  readonly id: string;
  readonly figures: unknown;
}

/** What it takes to adapt a recipe to these kettles, in their order, a batch at a time. */
export async function* readKettles(
  member: Member,
  entries: readonly KettleEntry[],
): AsyncGenerator<readonly KettleToAdapt[]> {
  const kettles = entries.filter(({ kettleName }) => kettleName !== null);
  const lots = await lotFigures(
    member,
    kettles.flatMap(({ kept }) => (kept === null ? [] : Object.values(kept.choice.lots))),
  );
  for (let start = 0; start < kettles.length; start += BATCH) {
    const batch = kettles.slice(start, start + BATCH);
    const figuresOf = await readHeads(
      member,
      batch.map(({ key }) => key),
    );
    yield batch.flatMap(({ key, kept }) => {
      const figures = figuresOf.get(key);
      if (figures === undefined) return [];
      const own = Object.values(kept?.choice.lots ?? {}).flatMap((id) => {
        const lot = lots.get(id);
        return lot === undefined ? [] : [[id, lot] as const];
      });
      return [{ id: key, equipment: equipmentInput.parse(figures), lots: own }];
    });
  }
}

async function readHeads({ spaceId, userId }: Member, ids: readonly string[]): Promise<ReadonlyMap<string, unknown>> {
  const rows = await inSpace(
    spaceId,
    userId,
    (tx) => tx.$queryRaw<HeadRow[]>`
      SELECT e.id, r.figures
      FROM equipment e
      JOIN equipment_revision r ON r.space_id = e.space_id AND r.equipment_id = e.id AND r.rev = e.head_rev
      WHERE e.space_id = ${spaceId}::uuid AND e.id = ANY(${ids}::uuid[])`,
  );
  return new Map(rows.map(({ id, figures }) => [id, figures]));
}
