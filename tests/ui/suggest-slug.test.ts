import { describe, expect, it } from "vitest";
import { suggestSlug } from "@/app/suggest-slug";
import { newClub } from "@/lib/model/club";

describe("suggestSlug", () => {
  it.each([
    ["Millrace Brewers", "millrace-brewers"],
    ["  Überlauf  & Söhne ", "uberlauf-sohne"],
    ["42", "42"],
    ["—", ""],
  ])("makes an address of “%s”", (name, slug) => {
    expect(suggestSlug(name)).toBe(slug);
  });

  it("makes an address that a club may have, also of a long name", () => {
    const name = "The quite remarkably long-winded brewers of a-".repeat(2);
    expect(newClub.safeParse({ name, slug: suggestSlug(name) }).success).toBe(true);
  });
});
