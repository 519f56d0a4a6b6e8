"use server";

import { headers } from "next/headers";
import { redirect } from "next/navigation";
import { z } from "zod";
import { invitationForNewcomer, invitationToken } from "@/lib/model/invitation";
import { formAction } from "@/lib/server/action";
import { acceptInvitation } from "@/lib/server/invitations/accept";
import { requestFacts } from "@/lib/server/request-facts";
import { requireViewer } from "@/lib/server/session";

export const joinAsViewerAction = formAction(z.strictObject({ token: invitationToken }), async ({ token }) => {
  const { spaceSlug } = await acceptInvitation({ viewer: await requireViewer(), token });
  redirect(`/s/${spaceSlug}`);
});

export const joinAsNewcomerAction = formAction(invitationForNewcomer, async (newcomer) => {
  const { ip } = requestFacts(await headers(), undefined);
  return acceptInvitation({ ...newcomer, viewer: null, ip });
});
