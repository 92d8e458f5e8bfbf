import type { DemoPiece } from "@/lib/glossary/pieces";
import type { ScoreFile } from "../ui/read-in-worker";
import styles from "./page.module.css";

interface DemoRowsProps {
  demos: readonly DemoPiece[];
  onOpen: (file: ScoreFile) => void;
}

/** Pieces composed for this site. */
export function DemoRows({ demos, onOpen }: DemoRowsProps) {
  return (
    <ul className={styles.choices}>
      {demos.map((demo) => (
        <li key={demo.slug}>
          <button type="button" className={styles.choice} onClick={() => onOpen(ofDemo(demo))}>
            <span className={styles.title}>{demo.title}</span>
            <span className={styles.note}>
              {demo.instrument}, {demo.level}. {demo.purpose}
            </span>
          </button>
        </li>
      ))}
    </ul>
  );
}

function ofDemo({ file, title }: DemoPiece): ScoreFile {
  return {
    name: file,
    size: null,
    bytes: async () => {
      const response = await fetch(`/pieces/${encodeURIComponent(file)}`);
      if (!response.ok) throw new Error(`${file}: ${response.status}`);
      return new Uint8Array(await response.arrayBuffer());
    },
    trouble: `${title}: it comes over the network the first time; open it again when there is one.`,
  };
}
