import { trialDelivery } from "@/lib/model/trial/trial-entry";
import { apiRoute } from "@/lib/server/api-route";
import { AppError } from "@/lib/server/app-error";
import { boundedBody, tooLarge } from "@/lib/server/bounded-body";
import { jsonOf } from "@/lib/server/json-body";
import { optionalViewer, proveMember } from "@/lib/server/session";
import { recordEntries } from "@/lib/server/trials/record-entries";

interface TrialContext {
  readonly params: Promise<{ readonly space: string; readonly equipment: string; readonly trial: string }>;
}

/** Two hundred entries with every note at its longest. */
const MOST_BYTES = 512 * 1024;

/** Takes what was read, as often as it is sent, and answers with all that the trial has. */
export const POST = apiRoute(async (request: Request, { params }: TrialContext) => {
  const { space, equipment, trial } = await params;
  // A redirect to the sign-in page would look like an answer to a page that only wants to be rid of its readings.
  const viewer = await optionalViewer();
  if (viewer === null) {
    throw new AppError(
      "UNAUTHENTICATED",
      "You are no longer signed in. Sign in on another tab; the readings stay on this device.",
    );
  }
  const member = await proveMember(viewer, space);
  if (member === null) throw new AppError("NOT_FOUND", "There is no such trial here.");
  const body = await boundedBody(request, MOST_BYTES, () => tooLarge("delivery", MOST_BYTES));
  const { entries } = trialDelivery.parse(jsonOf(body));
  const answer = await recordEntries(member, { equipmentId: equipment, trialId: trial, entries });
  return Response.json(answer, { headers: { "Cache-Control": "no-store" } });
});
