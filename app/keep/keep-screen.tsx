"use client";
import { useCallback, useEffect, useState } from "react";
import { device } from "../ui/device";
import { Notice } from "../ui/notice";
import { counted } from "../ui/piece-facts";
import { Progress } from "../ui/progress";
import { FactRows } from "../ui/rows";
import { useLog } from "../ui/use-log";
import { usePieces } from "../ui/use-pieces";
import { useSets } from "../ui/use-sets";
import styles from "./keep.module.css";
import { sizeWords } from "./keep-words";
import { RemoveAll } from "./remove-all";
import { StateIn } from "./state-in";
import { StateOut } from "./state-out";

interface Kept {
  answers: number;
  pieces: number;
  sets: number;
  /** Bytes the browser counts for this site; null where it does not say. */
  bytes: number | null;
  /** The browser will not clear it by itself; null where it does not say. */
  lasting: boolean | null;
}

/** What this device keeps, out and in as one file, and the way to remove it all. */
export function KeepScreen() {
  const [kept, setKept] = useState<Kept | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const count = useCallback(async () => {
    try {
      setKept(await countKept());
      setTrouble(null);
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : "The device’s store did not answer.");
    }
  }, []);
  useEffect(() => void count(), [count]);

  const onChanged = useCallback(async () => {
    await Promise.all([
      useLog.getState().load(),
      usePieces.getState().load(),
      useSets.getState().load(),
    ]);
    await count();
  }, [count]);

  if (trouble) return <Notice kind="error" title={trouble} />;
  if (!kept) return <Progress label="Counting what is kept" />;
  const isEmpty = kept.answers + kept.pieces + kept.sets === 0;
  return (
    <>
      <section aria-labelledby="kept">
        <h2 id="kept">On this device</h2>
        <FactRows
          facts={[
            { key: "answers", label: "answers", value: counted(kept.answers, "answer") },
            { key: "pieces", label: "pieces", value: counted(kept.pieces, "piece") },
            { key: "sets", label: "sets with a date", value: counted(kept.sets, "set") },
            ...(kept.bytes === null
              ? []
              : [{ key: "size", label: "room taken", value: `about ${sizeWords(kept.bytes)}` }]),
            ...(kept.lasting === null
              ? []
              : [
                  {
                    key: "lasting",
                    label: "safe when space is short",
                    value: kept.lasting ? "yes" : <Firmly onAsked={count} />,
                  },
                ]),
          ]}
        />
      </section>
      <StateOut isEmpty={isEmpty} />
      <StateIn onChanged={onChanged} />
      {isEmpty ? null : <RemoveAll />}
    </>
  );
}

/** Asks the browser not to clear this site's data when space runs short. */
function Firmly({ onAsked }: { onAsked: () => Promise<void> }) {
  const [refused, setRefused] = useState(false);
  if (refused) return "the browser would not promise it; keep a file as well";
  return (
    <button
      type="button"
      className={styles.firmly}
      onClick={() =>
        void navigator.storage.persist().then((granted) => {
          setRefused(!granted);
          return onAsked();
        })
      }
    >
      ask the browser for it
    </button>
  );
}

async function countKept(): Promise<Kept> {
  const store = await device();
  const [answers, pieces, sets] = await Promise.all([
    store.answers(),
    store.pieces(),
    store.sets(),
  ]);
  const storage = "storage" in navigator ? navigator.storage : undefined;
  const estimate = await storage?.estimate?.().catch(() => undefined);
  const lasting = await storage?.persisted?.().catch(() => undefined);
  return {
    answers: answers.length,
    pieces: pieces.length,
    sets: sets.length,
    bytes: estimate?.usage ?? null,
    lasting: lasting ?? null,
  };
}
