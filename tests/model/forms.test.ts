import { describe, expect, it } from "vitest";
import { emailAddress, newPassword } from "@/lib/model/credentials";
import { fieldErrors } from "@/lib/model/field-errors";
import { newClub } from "@/lib/model/club";
import { newInvitation } from "@/lib/model/invitation";
import { DEFAULT_PREFERENCES } from "@/lib/model/preferences";
import { preferencesInput } from "@/lib/model/preferences-input";
import { INVITABLE_ROLES, ROLES, roleMay } from "@/lib/model/roles";

describe("emailAddress", () => {
  it("is stored in small letters without blanks", () => {
    expect(emailAddress.parse("  Ada@Example.ORG ")).toBe("ada@example.org");
  });

  it.each(["", "ada", "a@x.org,b@y.org", "a@x.org b@y.org", "a@x.org\nBcc: b@y.org", "@x.org"])(
    "refuses %j",
    (text) => {
      expect(emailAddress.safeParse(text).success).toBe(false);
    },
  );
});

describe("newPassword", () => {
  it.each([
    ["too short", "eleven chars".slice(0, 11), "Password is shorter than 12 characters"],
    ["one letter", "aaaaaaaaaaaaaaaa", "Password repeats the same few characters"],
    ["endless", "abcdef".repeat(40), "Password is longer than 200 characters"],
  ])("refuses one that is %s", (_what, password, message) => {
    expect(newPassword.safeParse(password).error?.issues[0]?.message).toBe(message);
  });

  it("takes a passphrase with blanks at its ends as it is", () => {
    expect(newPassword.parse(" four words of mine ")).toBe(" four words of mine ");
  });
});

describe("newInvitation", () => {
  const good = { role: "member", email: "", maxUses: "5", days: "7" };

  it("reads a form, where an empty address means anybody with the link", () => {
    expect(newInvitation.parse(good)).toEqual({ role: "member", email: null, maxUses: 5, days: 7 });
  });

  it.each([
    ["the role of organiser", { role: "organiser" }, { role: "Role is one of: member, judge, steward, guest" }],
    ["more than two weeks", { days: 15 }, { days: "Days until it ends 15 is outside 1 to 14" }],
    ["no use at all", { maxUses: 0 }, { maxUses: "Number of uses 0 is outside 1 to 200" }],
    [
      "many uses for one address",
      { email: "a@example.org" },
      { maxUses: "An invitation for one address can be used once" },
    ],
  ])("refuses %s", (_what, change, messages) => {
    const outcome = newInvitation.safeParse({ ...good, ...change });
    expect(outcome.success ? {} : fieldErrors(outcome.error)).toEqual(messages);
  });
});

describe("newClub", () => {
  it.each(["ab", "-club", "Club", "club name", "club/../x", "c".repeat(41)])("refuses the address %j", (slug) => {
    expect(newClub.safeParse({ name: "A club", slug }).success).toBe(false);
  });
});

describe("preferences", () => {
  it("have defaults that the form accepts", () => {
    expect(preferencesInput.parse(DEFAULT_PREFERENCES)).toEqual(DEFAULT_PREFERENCES);
  });
});

describe("roles", () => {
  it("never let an invitation make an organiser", () => {
    expect(INVITABLE_ROLES).not.toContain("organiser");
  });

  it("give organising to the organiser alone, and no writing to judges, stewards and guests", () => {
    expect(ROLES.filter((role) => roleMay(role, "organise"))).toEqual(["organiser"]);
    expect(ROLES.filter((role) => roleMay(role, "brew"))).toEqual(["organiser", "member"]);
    expect(ROLES.filter((role) => roleMay(role, "write recipes"))).toEqual(["organiser", "member"]);
  });
});
