import Link from "next/link";
import styles from "./site-foot.module.css";
import { ThemeToggle } from "./theme-toggle";

/** The foot of every page: what is beside the way, and the colour of the page. */
export function SiteFoot() {
  return (
    <footer className={styles.foot}>
      <ul className={styles.links}>
        <li>
          <Link href="/terms">All words and signs</Link>
        </li>
        <li>
          <Link href="/sources">Works cited</Link>
        </li>
        <li>
          <Link href="/keep">Keep</Link>
        </li>
      </ul>
      <ThemeToggle />
    </footer>
  );
}
