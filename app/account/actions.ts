"use server";

import { revalidatePath } from "next/cache";
import { cookies } from "next/headers";
import { redirect } from "next/navigation";
import { z } from "zod";
import { accountClosing } from "@/lib/model/account-closing";
import { passwordChange } from "@/lib/model/credentials";
import { mailChoice } from "@/lib/model/mail-choice";
import { preferencesInput } from "@/lib/model/preferences-input";
import { closeAccount } from "@/lib/server/accounts/close-account";
import { changePassword, saveMailChoice, savePreferences, signOutEverywhere } from "@/lib/server/accounts/writes";
import { formAction } from "@/lib/server/action";
import { requireViewer } from "@/lib/server/session";
import { THEME_COOKIE } from "@/lib/ui/theme";

const A_YEAR_S = 365 * 86_400;

export const savePreferencesAction = formAction(preferencesInput, async (preferences) => {
  await savePreferences(await requireViewer(), preferences);
  const cookie = { path: "/", maxAge: A_YEAR_S, sameSite: "lax", httpOnly: true } as const;
  (await cookies()).set(THEME_COOKIE, preferences.theme, cookie);
  // Numbers and theme change on every page.
  revalidatePath("/", "layout");
});

const mailForm = z
  .strictObject({ changes: z.literal("on").optional() })
  .transform(({ changes }) => ({ changes: changes === "on" }))
  .pipe(mailChoice);

export const saveMailChoiceAction = formAction(mailForm, async (choice) => {
  await saveMailChoice(await requireViewer(), choice);
  revalidatePath("/account");
});

export const changePasswordAction = formAction(passwordChange, async (change) => {
  await changePassword(await requireViewer(), change);
  redirect("/sign-in?notice=password");
});

export const signOutEverywhereAction = formAction(z.strictObject({}), async () => {
  await signOutEverywhere(await requireViewer());
  redirect("/sign-in?notice=everywhere");
});

export const closeAccountAction = formAction(accountClosing, async (closing) => {
  await closeAccount(await requireViewer(), closing);
  redirect("/sign-in?notice=closed");
});
