import type { EquipmentProfile } from "@/lib/model/equipment";
import { roleMay } from "@/lib/model/roles";
import { isOpen, type SharedBrew } from "@/lib/model/shared-brew";
import type { Member } from "@/lib/server/session";
import { JoinSection } from "./join-section";
import { ParticipantTable } from "./participant-table";

interface WhoTakesPartProps {
  readonly home: string;
  readonly shared: SharedBrew;
  readonly member: Member;
  readonly kettles: readonly EquipmentProfile[];
}

/** Everybody who takes part, and the way in while the shared brew is open. */
export function WhoTakesPart({ home, shared, member, kettles }: WhoTakesPartProps) {
  const { participants } = shared;
  const free = kettles.filter(({ id }) => participants.every(({ equipmentId }) => equipmentId !== id));
  const own = free.filter(({ ownerId }) => ownerId === member.userId);
  const isIn = participants.some(({ userId }) => userId === member.userId);
  const others = roleMay(member.role, "organise") ? free.filter(({ ownerId }) => ownerId !== member.userId) : [];
  const mayJoin = isOpen(shared.state) && roleMay(member.role, "brew");
  const hasWayIn = !isIn || own.length > 0 || others.length > 0;
  return (
    <>
      <section aria-labelledby="participants" className="mt-8">
        <h2 id="participants" className="mb-2">
          Who takes part
        </h2>
        {participants.length === 0 ? (
          <p className="text-muted">Nobody has joined yet.</p>
        ) : (
          <ParticipantTable home={home} shared={shared} participants={participants} />
        )}
      </section>
      {mayJoin && hasWayIn ? <JoinSection {...{ home, shared, kettles: own, others, isIn }} /> : null}
    </>
  );
}
