import { describe, expect, it } from "vitest";
import { beginPage } from "@/lib/day/sync/begin-page";

/** A session that notes what it is asked for; `sheet` is what the device keeps. */
function sessionWith(sheet: object | null, refresh: () => Promise<void>) {
  const done: string[] = [];
  const session = {
    snapshot: () => ({ sheet }),
    reread: () => Promise.resolve(void done.push("read from the device")),
    refresh: () => {
      done.push("asked the server");
      return refresh();
    },
    send: () => Promise.resolve(void done.push("sent")),
  };
  return { session, done, open: () => void done.push("opened") };
}

describe("opening a page that a device keeps", () => {
  it("shows what is on the device before the server has answered", async () => {
    const { session, done, open } = sessionWith({}, () => Promise.resolve());
    await beginPage(session, open);
    expect(done).toEqual(["read from the device", "opened", "asked the server", "sent"]);
  });

  it("shows nothing at a first visit until there is something to show", async () => {
    const { session, done, open } = sessionWith(null, () => Promise.resolve());
    await beginPage(session, open);
    expect(done).toEqual(["read from the device", "asked the server", "opened", "sent"]);
  });

  it("opens also where the device cannot keep what it was sent", async () => {
    const { session, done, open } = sessionWith(null, () => Promise.reject(new Error("the disk is full")));
    await expect(beginPage(session, open)).rejects.toThrow("the disk is full");
    expect(done).toEqual(["read from the device", "asked the server", "opened"]);
  });
});
