import { workerResponse } from "@/lib/server/day-files/respond";

/** The worker that keeps the page. */
export const GET = (): Promise<Response> => workerResponse("judging");
