import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { makePictures } from "@/lib/server/photos/pictures";
import { linkCard } from "@/lib/ui/card/link-card";
import { gpsJpeg, noisyJpeg, pictureBomb } from "../../support/pictures";

const text = (bytes: Uint8Array) => Buffer.from(bytes).toString("latin1");

async function colourAt(picture: Uint8Array, left: number, top: number): Promise<readonly number[]> {
  const { data } = await sharp(picture)
    .extract({ left, top, width: 1, height: 1 })
    .raw()
    .toBuffer({ resolveWithObject: true });
  return [...data.subarray(0, 3)];
}

describe("a photo that is kept", () => {
  it("says nothing of where, by whom and with what it was taken, which the one that was sent does", async () => {
    const sent = await gpsJpeg();
    const told = await sharp(sent).metadata();
    expect(text(told.exif ?? new Uint8Array())).toContain("Invented Brewer");
    // Tag 8825 of the first directory leads to the GPS directory.
    expect(text(told.exif ?? new Uint8Array())).toMatch(/\x25\x88|\x88\x25/);
    const { whole, thumb } = await makePictures(sent);
    for (const { bytes } of [whole, thumb]) {
      const kept = await sharp(bytes).metadata();
      expect(kept.format).toBe("webp");
      expect([kept.exif, kept.xmp, kept.iptc, kept.icc, kept.orientation]).toEqual(Array(5).fill(undefined));
      expect(text(bytes)).not.toMatch(/Invented|invented camera|Exif|EXIF|XMP /);
    }
  });

  it("stands as the phone was held", async () => {
    // Orientation 6 of EXIF: the picture is shown turned by 90° clockwise, so what was left is above.
    const { whole } = await makePictures(await gpsJpeg(6));
    expect([whole.width, whole.height]).toEqual([40, 80]);
    const [above, below] = [await colourAt(whole.bytes, 20, 10), await colourAt(whole.bytes, 20, 70)];
    expect(above[0]).toBeGreaterThan(200);
    expect(above[2]).toBeLessThan(60);
    expect(below[0]).toBeLessThan(60);
    expect(below[2]).toBeGreaterThan(200);
  });

  it("is at most 1600 pixels a side, with a small one of 320, and never larger than it was", async () => {
    const { whole, thumb } = await makePictures(await noisyJpeg(3200, 1000));
    expect([whole.width, whole.height]).toEqual([1600, 500]);
    expect([thumb.width, thumb.height]).toEqual([320, 100]);
    const small = await makePictures(await noisyJpeg(100, 50));
    expect([small.whole.width, small.thumb.width]).toEqual([100, 100]);
  });

  it("has nothing of what was hidden behind the picture", async () => {
    const sent = Buffer.concat([await gpsJpeg(), Buffer.from("<script>alert(1)</script>")]);
    const { whole } = await makePictures(new Uint8Array(sent));
    expect(text(whole.bytes)).not.toContain("script");
  });

  it.each(["png", "webp"] as const)("may have been sent as %s", async (format) => {
    const sent = await sharp(await noisyJpeg(64, 64))
      .toFormat(format)
      .toBuffer();
    const { whole } = await makePictures(new Uint8Array(sent));
    expect((await sharp(whole.bytes).metadata()).format).toBe("webp");
  });
});

describe("what photos may not be", () => {
  it("leaves the pictures of links to be drawn, in the same process", async () => {
    const card = linkCard({ title: "Bitter", line: "A recipe by nobody", figures: [], colourEbc: 20 });
    expect((await sharp(await card.arrayBuffer()).metadata()).format).toBe("png");
  });
});

describe("a photo that is refused", () => {
  const svg = '<svg xmlns="http://www.w3.org/2000/svg"><image href="file:///etc/passwd"/></svg>';
  const bytes = (content: string) => new Uint8Array(Buffer.from(content, "latin1"));

  it.each([
    ["an SVG", bytes(svg)],
    ["a text that calls itself a JPEG", bytes("This is photo.jpg, says its name.")],
    ["a PDF", bytes("%PDF-1.7 a document")],
    ["a GIF", bytes("GIF89a a moving picture")],
    ["nothing", new Uint8Array()],
  ])("is %s", async (_what, sent) => {
    await expect(makePictures(sent)).rejects.toThrow("Photo: the file is no JPEG, PNG or WebP picture");
  });

  it("begins like a JPEG and goes on as something else", async () => {
    await expect(makePictures(bytes(`\u00ff\u00d8\u00ff${svg}`))).rejects.toThrow("the picture is damaged");
  });

  it("ends in the middle", async () => {
    const sent = await noisyJpeg(400, 400);
    await expect(makePictures(sent.subarray(0, sent.length / 2))).rejects.toThrow("the picture is damaged");
  });

  it("would unpack into gigabytes, and says how many pixels are taken", async () => {
    const bomb = pictureBomb();
    expect(bomb.length).toBeLessThan(1000);
    await expect(makePictures(bomb)).rejects.toThrow(
      "Photo: 30000 × 30000 pixels are too many; at most 64 million are taken.",
    );
  });
});
