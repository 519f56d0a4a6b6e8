import { z } from "zod";
import { PHOTO_SIZES } from "@/lib/model/photo";

import { apiRoute } from "@/lib/server/api-route";
import { AppError } from "@/lib/server/app-error";
import { requestMember } from "@/lib/server/log/request-member";
import { findPhoto } from "@/lib/server/photos/reads";

interface PhotoContext {
  readonly params: Promise<{ readonly space: string; readonly brew: string; readonly photo: string }>;
}

const query = z.strictObject({ size: z.enum(PHOTO_SIZES).default("whole") });

/** A picture of a brew: `?size=thumb` for the small one. What an identifier shows never changes, so a browser keeps it. */
export const GET = apiRoute(async (request: Request, { params }: PhotoContext) => {
  const { space, brew: brewId, photo: id } = await params;
  const { size } = query.parse(Object.fromEntries(new URL(request.url).searchParams));
  const found = await findPhoto(await requestMember(space), { brewId, id, size });
  if (found === null) throw new AppError("NOT_FOUND", "There is no such photo here.");
  return new Response(found.bytes, {
    headers: {
      "content-type": found.mime,
      "content-disposition": "inline",
      "cache-control": "private, max-age=31536000, immutable",
      "x-content-type-options": "nosniff",
      "content-security-policy": "default-src 'none'; sandbox",
      "cross-origin-resource-policy": "same-origin",
    },
  });
});
