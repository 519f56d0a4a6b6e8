import { manifestResponse } from "@/lib/server/day-files/respond";

export const GET = (): Response => manifestResponse({ name: "Gylebook judging", shortName: "Judging" });
