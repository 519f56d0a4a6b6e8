const TOO_LONG_MS = 10_000;

/** Asks the server to wake this device for alarms; false where the server has no keys for it, or cannot be reached. */
export async function subscribeToPush(): Promise<boolean> {
  if (!("serviceWorker" in navigator)) return false;
  const registration = await navigator.serviceWorker.getRegistration("/brew-day/");
  if (registration === undefined || !("pushManager" in registration)) return false;
  try {
    const answer = await fetch("/api/push/key", { signal: AbortSignal.timeout(TOO_LONG_MS) });
    if (!answer.ok) return false;
    const { publicKey } = (await answer.json()) as { readonly publicKey: string };
    const subscription = await registration.pushManager.subscribe({
      userVisibleOnly: true,
      applicationServerKey: publicKey,
    });
    const stored = await fetch("/api/push/subscriptions", {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify(subscription),
      signal: AbortSignal.timeout(TOO_LONG_MS),
    });
    return stored.ok;
  } catch {
    return false;
  }
}
