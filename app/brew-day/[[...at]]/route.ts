import { shellResponse, type ShellContext } from "@/lib/server/day-files/respond";

/** The page of every brew day: the same for everybody, without any data. */
export const GET = async (_request: Request, { params }: ShellContext): Promise<Response> =>
  shellResponse({
    at: (await params).at,
    api: "/api/brew-day",
    page: "brew-day",
    heading: "Brew day",
    withoutScripts:
      "The brew day needs scripts. The printed run sheet works without: open the brew in your club and print it.",
  });
