import type { Metadata } from "next";
import styles from "./keep.module.css";
import { KeepScreen } from "./keep-screen";

export const metadata: Metadata = { title: "Keep" };

export default function KeepPage() {
  return (
    <div className={styles.keep}>
      <header>
        <h1>Keep</h1>
        <p>
          Answers, pieces and dates live in this browser and nowhere else: no account, no name, no
          copy on a server. A browser whose data is cleared forgets them; a file keeps them.
        </p>
      </header>
      <KeepScreen />
      <section aria-labelledby="care">
        <h2 id="care">Care</h2>
        <ul className={styles.care}>
          <li>
            Rest as much as you play. Tired lips, fingers and eyes learn little; stop at pain and
            tell your teacher.
          </li>
          <li>
            Keep the volume low, above all in headphones: if someone beside you must raise their
            voice, it is too loud. Give your ears quiet after loud rehearsals.
          </li>
          <li>
            Drill in short sittings and sleep on them: ten minutes on three days hold longer than
            thirty on one.
          </li>
          <li>
            Where your teacher or director asks for something else than is written here, do what
            they ask. They hear you and know the piece; an entry gives only what is usual.
          </li>
        </ul>
      </section>
    </div>
  );
}
