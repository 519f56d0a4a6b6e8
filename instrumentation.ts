/** Called by Next once, when the server starts. */
export async function register(): Promise<void> {
  // There is another runtime, which has no sockets.
  if (process.env.NEXT_RUNTIME !== "nodejs") return;
  const { startMailWorker } = await import("@/lib/server/mail/worker");
  startMailWorker();
}
