import type { Metadata } from "next";
import { ButtonLink } from "./ui/button";
import styles from "./ui/state-page.module.css";

export const metadata: Metadata = { title: "No such page" };

export default function NotFoundPage() {
  return (
    <div className={styles.state}>
      <h1>Nothing is printed here.</h1>
      <p>
        The address may be mistyped, or the page has moved. If you met a word on your part, look it
        up as it is printed; misspellings are found too.
      </p>
      <p>
        <ButtonLink kind="filled" href="/">
          Look up a word or sign
        </ButtonLink>
      </p>
    </div>
  );
}
