import type { Metadata, Viewport } from "next";
import { cookies } from "next/headers";
import type { ReactNode } from "react";
import { optionalViewer } from "@/lib/server/session";
import { THEME_COOKIE, themeFromCookie } from "@/lib/ui/theme";
import "./globals.css";
import { SiteFooter } from "./site-footer";
import { SiteHeader } from "./site-header";

export const metadata: Metadata = {
  title: { default: "Gylebook", template: "%s · Gylebook" },
  description: "A brewing club’s recipes and brew logs: one recipe, many kettles, one comparison.",
};

export const viewport: Viewport = { width: "device-width", initialScale: 1, colorScheme: "light dark" };

export default async function RootLayout({ children }: { readonly children: ReactNode }) {
  const viewer = await optionalViewer();
  const theme = viewer?.preferences.theme ?? themeFromCookie((await cookies()).get(THEME_COOKIE)?.value);
  return (
    <html lang="en-GB" data-theme={theme}>
      <body className="flex min-h-dvh flex-col">
        <a href="#content" className="skip-link">
          Skip to the content
        </a>
        <SiteHeader viewerName={viewer?.displayName ?? null} />
        <div className="flex-1">{children}</div>
        <SiteFooter />
      </body>
    </html>
  );
}
