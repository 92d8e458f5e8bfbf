import Link from "next/link";
import { Suspense } from "react";
import styles from "./page.module.css";
import { LookUp } from "./ui/look-up";
import { LookUpForm } from "./ui/look-up-form";
import { Row, Rows } from "./ui/rows";
import { StartShelf } from "./ui/start-shelf";

export default function StartPage() {
  return (
    <div className={styles.start}>
      <h1 className="aside-for-ears">Passagework: look up a word or sign</h1>
      <Suspense fallback={<LookUpForm />}>
        <LookUp>
          <div className={styles.under}>
            <StartShelf />
            <Rows label="The glossary">
              <Row href="/terms" lead="All words and signs, A to Z" />
              <Row href="/terms?lang=signs" lead="A sign without a name: find it among the signs" />
            </Rows>
            <p className="small soft">
              Works cited are <Link href="/sources">listed</Link>.
            </p>
          </div>
        </LookUp>
      </Suspense>
    </div>
  );
}
