"use client";
import { useRouter } from "next/navigation";
import { useCallback, useEffect, useRef } from "react";
import type { DemoPiece } from "@/lib/glossary/pieces";
import { Button } from "../ui/button";
import { Notice } from "../ui/notice";
import { pieceHref } from "../ui/piece-href";
import { Progress } from "../ui/progress";
import type { ScoreFile } from "../ui/read-in-worker";
import { useIsOffline } from "../ui/use-media";
import { usePieces } from "../ui/use-pieces";
import { useSets } from "../ui/use-sets";
import { ChoosePart } from "./choose-part";
import { DemoRows } from "./demo-rows";
import styles from "./page.module.css";
import { PieceRows } from "./piece-rows";
import { useFileDrop } from "./use-file-drop";
import { useOpenScore } from "./use-open-score";

/** The pieces of this device, and the ways to open another. */
export function PiecesScreen({ demos }: { demos: readonly DemoPiece[] }) {
  const router = useRouter();
  const { pieces, trouble, load } = usePieces();
  const { sets, load: loadSets } = useSets();
  const isOffline = useIsOffline();
  useEffect(() => {
    void load();
    void loadSets();
  }, [load, loadSets]);

  const onKept = useCallback((id: string) => router.push(pieceHref(id)), [router]);
  const { opening, open, choosePart, refuse, rest } = useOpenScore(onKept);
  const onFiles = useCallback(
    (files: readonly File[]) => {
      const [file] = files;
      if (files.length > 1) refuse(`${files.length} files at once: open one score at a time.`);
      else if (file) open(ofFile(file));
    },
    [open, refuse],
  );
  const isOver = useFileDrop(onFiles);

  return (
    <div className={styles.page}>
      <div className={styles.head}>
        <h1>Pieces</h1>
        <p className="soft">
          Open the score of what you audition with, and every word and sign of your part is
          explained where it stands. The file stays on this device.
        </p>
      </div>

      <section className={styles.open} aria-label="Open a score" data-over={isOver}>
        {opening.at === "parts" ? (
          <ChoosePart reading={opening.reading} onChoose={choosePart} onLeave={rest} />
        ) : opening.at === "work" ? (
          <Progress
            label={`${opening.step === "opening" ? "Opening" : "Reading"} ${opening.name}`}
            onCancel={rest}
          />
        ) : opening.at === "keeping" ? (
          <Progress label={`Keeping ${opening.name}`} />
        ) : (
          <OpenButton onFiles={onFiles} isOver={isOver} />
        )}
        {opening.at === "refused" ? (
          <Notice kind="error" title={opening.sentence}>
            Nothing else has changed.
          </Notice>
        ) : null}
      </section>

      <section className={styles.own} aria-labelledby="own">
        <h2 id="own">On this device</h2>
        {trouble ? <Notice kind="error" title={trouble} /> : null}
        {pieces === null ? (
          <p className="soft" role="status">
            One moment.
          </p>
        ) : pieces.length > 0 ? (
          <PieceRows pieces={pieces} sets={sets ?? []} />
        ) : trouble ? null : (
          <Notice kind="empty" title="No piece yet.">
            Notation programs save a score as MusicXML (.musicxml, .mxl) or MEI (.mei): ask your
            teacher for that file, or begin with one of the pieces to try.
          </Notice>
        )}
      </section>

      {demos.length > 0 ? (
        <section className={styles.demos} aria-labelledby="demos">
          <h2 id="demos">Pieces to try</h2>
          {isOffline ? (
            <Notice kind="offline" title="A piece not opened before may not come.">
              Your own scores open without it.
            </Notice>
          ) : null}
          <DemoRows demos={demos} onOpen={open} />
        </section>
      ) : null}
    </div>
  );
}

function ofFile(file: File): ScoreFile {
  return {
    name: file.name,
    size: file.size,
    bytes: async () => new Uint8Array(await file.arrayBuffer()),
    trouble: `${file.name}: it could not be opened; choose it again, or copy it to this device first.`,
  };
}

/** No `accept`: phones grey out endings they do not know, and the reader says itself what it cannot read. */
function OpenButton({
  onFiles,
  isOver,
}: {
  onFiles: (files: readonly File[]) => void;
  isOver: boolean;
}) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <div className={styles.button}>
      <Button kind="filled" onClick={() => input.current?.click()}>
        Open a score
      </Button>
      <p className={`small soft ${styles.drop}`}>
        {isOver ? "Let go, and it is opened." : "or drop it anywhere on this page"}
      </p>
      <input
        ref={input}
        type="file"
        className="aside-for-ears"
        tabIndex={-1}
        aria-hidden="true"
        aria-label="Score file"
        onChange={(event) => {
          onFiles([...(event.target.files ?? [])]);
          // The same file may be chosen again after a refusal.
          event.target.value = "";
        }}
      />
    </div>
  );
}
