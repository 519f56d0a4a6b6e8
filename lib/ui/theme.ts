import { PREFERENCE_CHOICES, type Preferences } from "@/lib/model/preferences";

/** Keeps the theme for pages that are read before signing in. It says nothing else about anybody. */
export const THEME_COOKIE = "gylebook-theme";

/** The theme in a cookie, which is the client's to write. */
export function themeFromCookie(value: string | undefined): Preferences["theme"] {
  return PREFERENCE_CHOICES.theme.find((theme) => theme === value) ?? "auto";
}
