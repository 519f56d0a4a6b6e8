import { shellResponse } from "@/lib/server/day-files/respond";

/** The page of every tasting for its judges: the same for everybody, without any data. */
export const GET = (): Promise<Response> =>
  shellResponse({
    page: "judging",
    heading: "Judging",
    withoutScripts:
      "Judging on a screen needs scripts. A printed sheet works without: ask the steward of the tasting for one.",
  });
