import { z } from "zod";

const EARLIEST = Date.parse("2000-01-01T00:00:00Z");
const LATEST = Date.parse("2200-01-01T00:00:00Z");

/** A moment as a device states it. */
export function instant(label: string): z.ZodType<string> {
  return z.string({ error: `${label} is not a time` }).transform((text, context) => {
    const at = Date.parse(text);
    // Without a zone the same text would be another moment on every device.
    const isZoned = /(?:Z|[+-]\d\d:\d\d)$/.test(text);
    if (!Number.isNaN(at) && isZoned && at >= EARLIEST && at <= LATEST) return new Date(at).toISOString();
    const shown = text.slice(0, 40);
    context.addIssue({
      code: "custom",
      message: `${label} “${shown}” is not a time with a zone between the years 2000 and 2200`,
    });
    return z.NEVER;
  });
}
