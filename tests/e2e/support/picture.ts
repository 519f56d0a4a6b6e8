import type { Page } from "playwright/test";

const PNG = "89504e470d0a1a0a";

/** How an address answers, and the size of a PNG as the file says it: ISO/IEC 15948, IHDR. */
export async function pictureOf(
  page: Page,
  address: string,
): Promise<{ readonly status: number; readonly size: string }> {
  const answer = await page.request.get(address);
  const file = await answer.body();
  const isPng = file.subarray(0, 8).toString("hex") === PNG;
  const size = isPng ? `${String(file.readUInt32BE(16))} × ${String(file.readUInt32BE(20))}` : "no picture";
  return { status: answer.status(), size };
}
