import type { Metadata, Viewport } from "next";
import type { ReactNode } from "react";
import "./ui/tokens.css";
import "./ui/base.css";
import { faces } from "./ui/fonts";
import styles from "./ui/layout.module.css";
import { SiteFoot } from "./ui/site-foot";
import { SiteNav } from "./ui/site-nav";

export const metadata: Metadata = {
  title: { default: "Passagework", template: "%s · Passagework" },
  description:
    "What every word and sign of your audition piece asks of the next note, and a plan to know them by the date.",
};

export const viewport: Viewport = {
  width: "device-width",
  initialScale: 1,
  viewportFit: "cover",
  themeColor: [
    { media: "(prefers-color-scheme: light)", color: "#fffdf6" },
    { media: "(prefers-color-scheme: dark)", color: "#1f1c18" },
  ],
};

export default function RootLayout({ children }: { children: ReactNode }) {
  return (
    // theme.js may set data-theme before React sees the document.
    <html lang="en" className={faces} suppressHydrationWarning>
      <head>
        <script src="/theme.js" />
      </head>
      <body>
        <a href="#content" className={styles.skip}>
          Skip to the content
        </a>
        <SiteNav />
        <main id="content" tabIndex={-1} className={styles.main}>
          {children}
        </main>
        <SiteFoot />
      </body>
    </html>
  );
}
