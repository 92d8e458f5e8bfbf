"use client";
import { useRouter } from "next/navigation";
import { useState } from "react";
import type { PieceRecord, SetRecord } from "@/lib/store/records";
import { Button, ButtonRow } from "../ui/button";
import { Dialog } from "../ui/dialog";
import { Notice } from "../ui/notice";
import { usePieces } from "../ui/use-pieces";
import { useSets } from "../ui/use-sets";

/** Takes the piece and its date off this device, after asking. */
export function RemovePiece({ piece, sets }: { piece: PieceRecord; sets: readonly SetRecord[] }) {
  const router = useRouter();
  const { remove } = usePieces();
  const { remove: removeSet } = useSets();
  const [asking, setAsking] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);

  const onRemove = async () => {
    try {
      for (const set of sets) await removeSet(set.id);
      router.replace("/pieces");
      await remove(piece.id);
    } catch (error) {
      setTrouble(
        error instanceof Error ? error.message : "It could not be removed; try once more.",
      );
    }
  };

  return (
    <>
      <Button kind="quiet" onClick={() => setAsking(true)}>
        Remove this piece
      </Button>
      <Dialog
        open={asking}
        onClose={() => setAsking(false)}
        title="Remove this piece?"
        actions={
          <ButtonRow>
            <Button onClick={() => setAsking(false)}>Keep it</Button>
            <Button kind="filled" onClick={() => void onRemove()}>
              Remove it
            </Button>
          </ButtonRow>
        }
      >
        <p>
          {piece.title} and its date leave this device. What you have learnt of its words and signs
          stays.
        </p>
        {trouble === null ? null : <Notice kind="error" title={trouble} />}
      </Dialog>
    </>
  );
}
