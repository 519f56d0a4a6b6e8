import { describe, expect, it } from "vitest";
import { readPhoto } from "@/lib/server/photos/read-photo";

const MB = 1024 * 1024;
const URL = "http://localhost/photos";

/** A body that comes in pieces, and says how much of it was asked for. */
function pieces(megabytes: number) {
  let given = 0;
  const body = new ReadableStream<Uint8Array>(
    {
      pull(controller) {
        if (given === megabytes) controller.close();
        else {
          given += 1;
          controller.enqueue(new Uint8Array(MB));
        }
      },
    },
    { highWaterMark: 0 },
  );
  return { body, given: () => given };
}

const sent = (body: BodyInit, headers: HeadersInit = {}) =>
  // Node asks for this word where a body is a stream; the type of the browser's Request does not know it.
  new Request(URL, { method: "POST", body, headers, duplex: "half" } as RequestInit);

describe("readPhoto", () => {
  it("takes the bytes as they are, and as a field of a form", async () => {
    expect(await readPhoto(sent(new Uint8Array([1, 2, 3]), { "content-type": "image/jpeg" }))).toEqual(
      new Uint8Array([1, 2, 3]),
    );
    const form = new FormData();
    form.set("photo", new File([new Uint8Array([4, 5])], "IMG_1.JPG"));
    expect(await readPhoto(sent(form))).toEqual(new Uint8Array([4, 5]));
  });

  it("refuses 50 MB by its stated length, before it reads any", async () => {
    const { body, given } = pieces(50);
    await expect(readPhoto(sent(body, { "content-length": String(50 * MB) }))).rejects.toThrow(
      "Photo: 50 MB are too large; a photo has at most 10 MB.",
    );
    expect(given()).toBe(0);
  });

  it.each([{}, { "content-length": "1000" }])(
    "refuses 50 MB that do not say so, after a little over ten",
    async (headers) => {
      const { body, given } = pieces(50);
      await expect(readPhoto(sent(body, headers))).rejects.toThrow("are too large; a photo has at most 10 MB.");
      expect(given()).toBeLessThanOrEqual(12);
    },
  );

  it("refuses a form without the field, and an empty file", async () => {
    await expect(readPhoto(sent(new FormData()))).rejects.toThrow("the form has no file in its field “photo”");
    await expect(readPhoto(sent("", { "content-type": "image/jpeg" }))).rejects.toThrow("Photo: the file is empty.");
  });
});
