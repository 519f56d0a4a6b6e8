import { describe, expect, it } from "vitest";
import { uuidV7 } from "@/lib/ui/brew/uuid-v7";

describe("uuidV7", () => {
  it("is the example of RFC 9562, appendix A.6, for its time and random bits", () => {
    // unix_ts_ms 0x017F22E279B0, rand_a 0xCC3, rand_b 0x18C4DC0C0C07398F
    const random = Uint8Array.from([0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f]);
    expect(uuidV7(0x017f22e279b0, random)).toBe("017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
  });

  it("sorts as text in order of time", () => {
    const random = new Uint8Array(10).fill(0xff);
    const later = new Uint8Array(10);
    expect(uuidV7(1_700_000_000_000, random) < uuidV7(1_700_000_000_001, later)).toBe(true);
  });
});
