"use server";

import { revalidatePath } from "next/cache";
import type { ActionResult } from "@/lib/model/action-result";
import { logRequest } from "@/lib/model/log/log-request";
import { action } from "@/lib/server/action";
import { AppError } from "@/lib/server/app-error";
import { storeWhole } from "@/lib/server/log/ingest";
import { memberAtTheKettle } from "./member-at-the-kettle";

/** Writes entries that belong together into the log of a brew: all of them, or none. */
export async function logAction(
  space: string,
  brewId: string,
  input: unknown,
): Promise<ActionResult<{ readonly savedAt: Date }>> {
  const run = action(logRequest, async ({ events }) => {
    if (events.some((event) => event.brewId !== brewId)) {
      throw new AppError("INVALID", "An entry is of another brew than this page.");
    }
    const refused = await storeWhole(await memberAtTheKettle(space), events);
    if (refused !== null) throw new AppError("CONFLICT", refused);
    revalidatePath(`/s/${space}/brews`, "layout");
    return { savedAt: new Date() };
  });
  return run(input);
}
