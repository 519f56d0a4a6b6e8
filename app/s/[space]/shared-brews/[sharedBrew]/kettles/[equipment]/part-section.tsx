import { isOpen } from "@/lib/model/shared-brew";
import { localTime, timeInWords } from "@/lib/model/zoned-time";
import type { Member } from "@/lib/server/session";
import type { KettleSheet } from "@/lib/server/shared-brews/find-sheet";
import { Notice } from "@/lib/ui/notice";
import { changePartAction, joinAction, leaveAction } from "./actions";
import { HiddenForm } from "./hidden-form";
import { PartForm } from "./part-form";

interface PartSectionProps {
  readonly member: Member;
  readonly sheet: KettleSheet;
  readonly mayWrite: boolean;
}

/** The member's own part: joining, the day, water and yeast, the calendar, and leaving again. */
export function PartSection({ member, sheet, mayWrite }: PartSectionProps) {
  const { planned, profile, participant, adapted } = sheet;
  const { window, rules } = planned.plan;
  const space = member.spaceSlug;
  const here = `/s/${space}/shared-brews/${planned.id}/kettles/${profile.id}`;
  const isOwn = profile.ownerId === member.userId;
  const ids = { sharedBrewId: planned.id, equipmentId: profile.id };
  if (!mayWrite) return <p className="mt-4 text-muted">{whoMay(sheet)}</p>;
  if (participant === null && (!isOpen(planned.state) || adapted.chosen === null)) {
    return isOpen(planned.state) ? null : <p className="mt-4 text-muted">The shared brew is {planned.state}.</p>;
  }
  return (
    <section aria-labelledby="part" className="no-print mt-8 max-w-2xl">
      <h2 id="part" className="mb-2">
        {participant === null ? "Join" : isOwn ? "Your part" : `The part of ${participant.userName}`}
      </h2>
      {participant === null ? null : <DayLine sheet={sheet} here={here} />}
      <PartForm
        key={participant?.lockVersion ?? 0}
        ids={ids}
        planVersion={planned.version}
        window={window}
        rules={rules}
        participant={participant}
        joinWords={isOwn ? `Join with ${profile.equipment.name}` : `Enter ${profile.ownerName}`}
        action={(participant === null ? joinAction : changePartAction).bind(null, space)}
      />
      {participant === null || participant.brew !== null ? null : (
        <div className="mt-4">
          <HiddenForm
            values={{ ...ids, lockVersion: participant.lockVersion }}
            action={leaveAction.bind(null, space)}
            pending="Leaving…"
            kind="attention"
          >
            {isOwn ? "Leave the shared brew" : `Take ${participant.userName} out`}
          </HiddenForm>
        </div>
      )}
    </section>
  );
}

function DayLine({ sheet, here }: { readonly sheet: KettleSheet; readonly here: string }) {
  const { planned, participant } = sheet;
  if (participant === null || participant.brewAt === null || participant.zone === null) {
    return <p className="mb-3">No brew day chosen yet.</p>;
  }
  const { brewAt, zone } = participant;
  const { window } = planned.plan;
  const { day } = localTime(brewAt, zone);
  const isOutside = window !== null && (day < window.from || day > window.to);
  return (
    <>
      <p className="mb-3">
        Brew day: {timeInWords(brewAt, zone)}.{" "}
        <a href={`${here}/calendar`} className="target">
          Take it into a calendar
        </a>
      </p>
      {isOutside ? (
        <Notice kind="attention">The plan has moved, and this day is outside its days now: choose another.</Notice>
      ) : null}
    </>
  );
}

function whoMay({ profile, participant }: KettleSheet): string {
  const state = participant === null ? "does not take part" : "takes part";
  return `This kettle ${state}. Only ${profile.ownerName} or an organiser changes that.`;
}
