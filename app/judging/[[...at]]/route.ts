import { shellResponse, type ShellContext } from "@/lib/server/day-files/respond";

/** The page of every tasting for its judges: the same for everybody, without any data. */
export const GET = async (_request: Request, { params }: ShellContext): Promise<Response> =>
  shellResponse({
    at: (await params).at,
    api: "/api/tastings",
    page: "judging",
    heading: "Judging",
    withoutScripts:
      "Judging on a screen needs scripts. A printed sheet works without: ask the steward of the tasting for one.",
  });
