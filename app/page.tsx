import Link from "next/link";
import styles from "./page.module.css";
import { LookUpForm } from "./ui/look-up-form";
import { Row, Rows } from "./ui/rows";

export default function StartPage() {
  return (
    <div className={styles.start}>
      <h1 className="aside-for-ears">Passagework: look up a word or sign</h1>
      <LookUpForm autoFocus />
      <Rows label="Ways in">
        <Row href="/terms" lead="All words and signs, A to Z" />
        <Row href="/terms?lang=signs" lead="Signs by name" />
      </Rows>
      <p className="small soft">
        Works cited are <Link href="/sources">listed</Link>.
      </p>
    </div>
  );
}
