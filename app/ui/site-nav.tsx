"use client";
import Link from "next/link";
import { usePathname } from "next/navigation";
import { LookUpForm } from "./look-up-form";
import { NameMark } from "./name-mark";
import styles from "./site-nav.module.css";

/** What the app is for, in the order of a student's day; `under` are the paths that belong to it. */
const PLACES = [
  { href: "/", words: "Look up", under: ["/terms"] },
  { href: "/pieces", words: "Pieces", under: ["/piece"] },
  { href: "/drill", words: "Drill", under: [] },
  { href: "/passage", words: "Passage", under: [] },
] as const;

/** One bar: at the bottom edge under the thumb on a phone, a row at the top of a desk. */
export function SiteNav() {
  const path = usePathname();
  return (
    <header className={styles.top}>
      <Link href="/" className={styles.name}>
        <NameMark />
      </Link>
      <nav className={styles.bar} aria-label="Main">
        <ul className={styles.places}>
          {PLACES.map(({ href, words, under }) => (
            <li key={href}>
              <Link href={href} className={styles.place} aria-current={current(path, href, under)}>
                <span className={styles.words}>{words}</span>
              </Link>
            </li>
          ))}
        </ul>
      </nav>
      {path === "/" ? null : (
        <div className={styles.lookUp}>
          <LookUpForm look="small" />
        </div>
      )}
    </header>
  );
}

function current(
  path: string,
  href: string,
  under: readonly string[],
): "page" | "true" | undefined {
  if (path === href) return "page";
  const isUnder = [...(href === "/" ? [] : [href]), ...under].some(
    (place) => path === place || path.startsWith(`${place}/`),
  );
  return isUnder ? "true" : undefined;
}
