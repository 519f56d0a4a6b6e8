import { describe, expect, it } from "vitest";
import { requestFacts } from "@/lib/server/request-facts";

function ipFrom(forwardedFor: string): string {
  return requestFacts(new Headers({ "x-forwarded-for": forwardedFor }), undefined).ip;
}

describe("requestFacts", () => {
  it("takes the address that the nearest proxy saw, not those that the client wrote", () => {
    expect(ipFrom("203.0.113.9")).toBe("203.0.113.9");
    expect(ipFrom("10.0.0.1, 198.51.100.4, 203.0.113.9")).toBe("203.0.113.9");
  });

  it("counts a whole IPv6 network of 64 bits as one", () => {
    expect(ipFrom("2001:db8:1:2:3:4:5:6")).toBe("2001:db8:1:2::/64");
    expect(ipFrom("2001:db8:1:2::1")).toBe("2001:db8:1:2::/64");
    expect(ipFrom("2001:db8::1")).toBe("2001:db8:0:0::/64");
    expect(ipFrom("::1")).toBe("0:0:0:0::/64");
    expect(ipFrom("::ffff:203.0.113.9")).toBe("::ffff:203.0.113.9");
  });

  it("knows nothing of a request without addresses", () => {
    expect(requestFacts(new Headers(), undefined)).toEqual({ ip: "unknown", userAgent: null, reference: null });
  });
});
