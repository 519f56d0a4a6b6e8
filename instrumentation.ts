import type { Instrumentation } from "next";

/** Called by Next once, when the server starts. */
export async function register(): Promise<void> {
  // There is another runtime, which has no sockets.
  if (process.env.NEXT_RUNTIME !== "nodejs") return;
  // A development server takes its address from the request, and any secret.
  if (process.env.NODE_ENV === "production") {
    const { stopUnlessSet } = await import("@/lib/server/check-settings");
    stopUnlessSet();
  }
  const { prepareBlobs } = await import("@/lib/server/blobs/open-blobs");
  // At the start, because a wrong setting should not wait for the first photo.
  await prepareBlobs();
  const { startMailWorker } = await import("@/lib/server/mail/worker");
  startMailWorker();
  const { startAlarmWorker } = await import("@/lib/server/push/worker");
  startAlarmWorker();
  const { endLiveStreams } = await import("@/lib/server/live/live-stream");
  // The server ends once every request has been answered, and a live view never would be.
  for (const signal of ["SIGTERM", "SIGINT"]) process.once(signal, endLiveStreams);
  const { startCellarWorker } = await import("@/lib/server/cellar/worker");
  startCellarWorker();
  const { startSummaryWorker } = await import("@/lib/server/summaries/worker");
  startSummaryWorker();
}

/** An error that no page or handler expected: where it happened, and what kind it was. */
export const onRequestError: Instrumentation.onRequestError = async (error, _request, { routePath, routeType }) => {
  if (process.env.NEXT_RUNTIME !== "nodejs") return;
  const { noteError } = await import("@/lib/server/note-error");
  noteError("request failed", error, { route: routePath, kind: routeType });
};
