import { z } from "zod";
import { emailAddress, newPassword, personName } from "./credentials";
import { counted } from "./measured";
import { INVITABLE_ROLES } from "./roles";
import { oneOf } from "./written";

/** An empty address field means anybody who holds the link. */
const addressOrAnybody = z.preprocess((value) => (value === "" ? null : value), emailAddress.nullable());

export const newInvitation = z
  .strictObject({
    role: oneOf("Role", INVITABLE_ROLES),
    email: addressOrAnybody,
    maxUses: counted("Number of uses", { min: 1, max: 200 }),
    days: counted("Days until it ends", { min: 1, max: 14 }),
  })
  .refine((invitation) => invitation.email === null || invitation.maxUses === 1, {
    path: ["maxUses"],
    message: "An invitation for one address can be used once",
  });
export type NewInvitation = z.output<typeof newInvitation>;

/** The token that stands in the fragment of an invitation link. */
export const invitationToken = z.string().regex(/^[\w-]{43}$/, "This is not an invitation link");

/** Somebody without an account takes an invitation. */
export const invitationForNewcomer = z.strictObject({
  token: invitationToken,
  email: emailAddress,
  displayName: personName,
  password: newPassword,
});
export type InvitationForNewcomer = z.output<typeof invitationForNewcomer>;

/** One invitation as the organiser sees it; the token itself is shown only once, when it is made. */
export interface Invitation {
  readonly id: string;
  readonly role: (typeof INVITABLE_ROLES)[number];
  readonly email: string | null;
  readonly uses: number;
  readonly maxUses: number;
  readonly expiresAt: Date;
  readonly revokedAt: Date | null;
}
