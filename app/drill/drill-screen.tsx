"use client";
import { useSearchParams } from "next/navigation";
import { useEffect } from "react";
import { ButtonLink } from "../ui/button";
import { Notice } from "../ui/notice";
import { Progress } from "../ui/progress";
import { useGlossary } from "../ui/use-glossary";
import { useLog } from "../ui/use-log";
import { usePieces } from "../ui/use-pieces";
import { useSets } from "../ui/use-sets";
import { DrillChoice } from "./drill-choice";
import { DrillRound } from "./drill-round";
import { whatToDrill } from "./what-to-drill";

/** Finds what the address asks to drill on this device; without an address, offers a choice. */
export function DrillScreen() {
  const params = useSearchParams();
  const { pieces, load: loadPieces, trouble: piecesTrouble } = usePieces();
  const { sets, load: loadSets } = useSets();
  const { answers, load: loadLog } = useLog();
  const { bySlug, trouble } = useGlossary();
  useEffect(() => {
    void loadPieces();
    void loadSets();
    void loadLog();
  }, [loadPieces, loadSets, loadLog]);

  if (trouble && !bySlug) {
    return (
      <Notice kind="offline" title="The glossary is not on this device yet.">
        Open this page once with the network on; then it is here without it.
      </Notice>
    );
  }
  if (!pieces || !sets || !answers || !bySlug) return <Progress label="Opening the drill" />;
  const job = whatToDrill(
    {
      set: params.get("set"),
      piece: params.get("piece"),
      axis: params.get("axis"),
      minutes: params.get("minutes"),
    },
    { sets, pieces, entries: bySlug },
  );
  if (job === "none") return <DrillChoice sets={sets} pieces={pieces} entries={bySlug} />;
  if (job === "gone" || job.slugs.length === 0) {
    return (
      <Notice
        kind="empty"
        title={
          job === "gone"
            ? "What this address names is not on this device."
            : `${job.title} has no word or sign of the glossary.`
        }
        action={<ButtonLink href="/drill">Choose what to drill</ButtonLink>}
      >
        {job === "gone"
          ? (piecesTrouble ?? "A piece or a set lives where it was made.")
          : "Choose another set."}
      </Notice>
    );
  }
  return <DrillRound key={`${job.key} ${job.minutes}`} job={job} entries={bySlug} />;
}
