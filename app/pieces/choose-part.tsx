import type { Reading } from "@/lib/reading/reading";
import { Button } from "../ui/button";
import { counted, partName, pieceSlugs } from "../ui/piece-facts";
import styles from "./page.module.css";

interface ChoosePartProps {
  reading: Reading;
  onChoose: (partIndex: number) => void;
  onLeave: () => void;
}

/** A score of several parts: the player says which one is theirs. */
export function ChoosePart({ reading, onChoose, onLeave }: ChoosePartProps) {
  return (
    <div>
      <h2 id="parts">Which part is yours?</h2>
      <ul className={styles.choices} aria-labelledby="parts">
        {reading.parts.map(({ id }, partIndex) => (
          <li key={id}>
            <button type="button" className={styles.choice} onClick={() => onChoose(partIndex)}>
              <span className={styles.title}>{partName(reading, partIndex)}</span>
              <span className={styles.note}>
                {counted(pieceSlugs(reading, partIndex).length, "word or sign", "words and signs")}
              </span>
            </button>
          </li>
        ))}
      </ul>
      <Button kind="quiet" onClick={onLeave}>
        Leave it
      </Button>
    </div>
  );
}
