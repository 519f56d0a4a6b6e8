"use server";

import { chooseWay, wayChange } from "@/lib/server/adaptations/choose";
import { formAction } from "@/lib/server/action";
import { requireMember } from "@/lib/server/session";
import { z } from "zod";

const request = z.strictObject({ ...wayChange.shape, space: z.string() });

/** Keeps a way out for one kettle, or takes it back. */
export const chooseWayAction = formAction(request, async ({ space, ...change }) =>
  chooseWay(await requireMember(space), change),
);
