import type { ActionResult } from "@/lib/model/action-result";
import type { KeepOutcome } from "@/lib/model/ingredient";
import { Notice } from "@/lib/ui/notice";

interface KeepAnswerProps {
  readonly result: ActionResult<KeepOutcome> | null;
  /** What was changed: "ingredient", "lot". */
  readonly what: string;
}

/** Says that a change was kept, or that somebody else was first; what was typed stays in the form. */
export function KeepAnswer({ result, what }: KeepAnswerProps) {
  if (result?.status !== "ok") return null;
  if (result.data.ok) {
    return <Notice live>Kept.</Notice>;
  }
  return (
    <Notice kind="attention" live>
      Somebody else changed this {what} after you opened it, so nothing of yours was kept.{" "}
      <a href="">Look at it as it is now</a>, and then change it again.
    </Notice>
  );
}
