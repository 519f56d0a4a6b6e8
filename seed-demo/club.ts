import { createAccount } from "@/lib/server/accounts/create-account";
import { directory } from "@/lib/server/db";
import { hashPassword } from "@/lib/server/password";
import { closeSession, openSession } from "@/lib/server/sessions/writes";
import { proveMember, proveViewer, type Member } from "@/lib/server/proof";
import { foundClubFor } from "@/lib/server/spaces/writes";
import { DEMO_CLUB, DEMO_OUTSIDER, DEMO_PASSWORD, DEMO_PEOPLE, OTHER_CLUB, type DemoPerson } from "./people";

/** Makes accounts, benches and the two clubs. */
export async function seedPeople(): Promise<void> {
  const passwordHash = await hashPassword(DEMO_PASSWORD);
  await directory.$transaction(async (tx) => {
    const account = (person: DemoPerson): Promise<string> =>
      createAccount(tx, { email: person.email, displayName: person.name, passwordHash });
    let spaceId: string | null = null;
    for (const person of DEMO_PEOPLE) {
      const userId = await account(person);
      if (spaceId === null) {
        await foundClubFor(tx, userId, DEMO_CLUB);
        spaceId = (await tx.space.findUniqueOrThrow({ where: { slug: DEMO_CLUB.slug } })).id;
      } else {
        await tx.membership.create({ data: { spaceId, userId, role: person.role } });
      }
    }
    await foundClubFor(tx, await account(DEMO_OUTSIDER), OTHER_CLUB);
  });
}

/** Does something as a person of the demo club, through a session that ends with it. */
export async function asMember<Result>(
  email: string,
  slug: string,
  act: (member: Member) => Promise<Result>,
): Promise<Result> {
  const { id } = await directory.appUser.findUniqueOrThrow({ where: { emailNorm: email } });
  const reference = await openSession({ userId: id, userAgent: "demo seed" });
  try {
    const viewer = await proveViewer(reference);
    const member = viewer === null ? null : await proveMember(viewer, slug);
    if (member === null) throw new Error(`${email} does not belong to ${slug}`);
    return await act(member);
  } finally {
    await closeSession(reference);
  }
}
