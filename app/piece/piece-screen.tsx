"use client";
import { useSearchParams } from "next/navigation";
import { useEffect } from "react";
import { ButtonLink } from "../ui/button";
import { Notice } from "../ui/notice";
import { Progress } from "../ui/progress";
import { useGlossary } from "../ui/use-glossary";
import { usePieces } from "../ui/use-pieces";
import { useSets } from "../ui/use-sets";
import { PieceView } from "./piece-view";

const toPieces = <ButtonLink href="/pieces">To the pieces</ButtonLink>;

/** Finds the piece the address names on this device. */
export function PieceScreen() {
  const id = useSearchParams().get("id");
  const { pieces, trouble, load } = usePieces();
  const { sets, load: loadSets } = useSets();
  const { bySlug, trouble: glossaryTrouble } = useGlossary();
  useEffect(() => {
    void load();
    void loadSets();
  }, [load, loadSets]);

  const piece = pieces?.find((p) => p.id === id);
  if (trouble && !piece) return <Notice kind="error" title={trouble} action={toPieces} />;
  if (glossaryTrouble && !bySlug) {
    return (
      <Notice kind="offline" title="The glossary is not on this device yet." action={toPieces}>
        Open this page once with the network on; then it is here without it.
      </Notice>
    );
  }
  if (pieces === null || sets === null || bySlug === null)
    return <Progress label="Opening the piece" />;
  if (!piece) {
    return (
      <Notice kind="empty" title="This piece is not on this device." action={toPieces}>
        A piece lives where it was opened. Open its score here, or use the device you opened it on.
      </Notice>
    );
  }
  return (
    <PieceView
      key={piece.id}
      piece={piece}
      sets={sets.filter((s) => s.pieceId === piece.id)}
      entries={bySlug}
    />
  );
}
