"use client";
import Link from "next/link";
import { Fragment, useEffect } from "react";
import type { PieceRecord } from "@/lib/store/records";
import styles from "./in-your-pieces.module.css";
import { MeasureNumber } from "./measure-number";
import { measureStretches } from "./measure-stretches";
import { pieceHref } from "./piece-href";
import { printedMarks } from "./ribbon/printed-marks";
import { Row, Rows } from "./rows";
import { usePieces } from "./use-pieces";

interface InYourPiecesProps {
  slug: string;
  /** Slugs of the signs that say the same (the dot for staccato). */
  signs?: readonly string[];
}

/** More places than this are counted, not listed. */
const MOST_PLACES = 6;

/** Where the entry stands in the pieces of this device, in the player's own part. */
export function InYourPieces({ slug, signs = [] }: InYourPiecesProps) {
  const { pieces, trouble, load } = usePieces();
  useEffect(() => {
    void load();
  }, [load]);
  if (pieces === null) return null;
  const places = pieces.map((piece) => ({ piece, at: placesOf(piece, [slug, ...signs]) }));
  const met = places.filter(({ at }) => at.length > 0);
  return (
    <section aria-labelledby="in-your-pieces">
      <h2 id="in-your-pieces">In your pieces</h2>
      {met.length > 0 ? (
        <Rows>
          {met.map(({ piece, at }) => (
            <Row
              key={piece.id}
              lead={
                <Link href={pieceHref(piece.id, at[0])} className={styles.title}>
                  {piece.title}
                </Link>
              }
              note={<Stretches at={at} piece={piece} />}
            />
          ))}
        </Rows>
      ) : (
        <p className="small soft">{trouble ?? sayNone(pieces)}</p>
      )}
    </section>
  );
}

function Stretches({ at, piece }: { at: readonly number[]; piece: PieceRecord }) {
  const all = measureStretches(at, piece.reading.measures);
  const firsts = at.filter((index, i) => index - 1 !== at[i - 1]);
  const rest = all.length - MOST_PLACES;
  return (
    <>
      {all.slice(0, MOST_PLACES).map(({ number, through }, i) => (
        <Fragment key={firsts[i]}>
          {i > 0 ? ", " : null}
          <Link href={pieceHref(piece.id, firsts[i])} className={styles.place}>
            <MeasureNumber number={number} through={through} />
          </Link>
        </Fragment>
      ))}
      {rest > 0 ? ` and ${rest} more` : null}
    </>
  );
}

/** Measures by index, in order, tempo and road of the other parts included. */
function placesOf({ reading, partIndex }: PieceRecord, slugs: readonly string[]): number[] {
  const met = printedMarks(reading, partIndex).filter(({ found }) =>
    found.some((f) => f.slug !== null && slugs.includes(f.slug)),
  );
  return [...new Set(met.map(({ measureIndex }) => measureIndex))];
}

function sayNone(pieces: readonly PieceRecord[]): string {
  if (pieces.length === 0) return "Open a piece under Pieces, and its measures are named here.";
  const [only] = pieces;
  return pieces.length === 1 && only
    ? `It is not printed in ${only.title}.`
    : `It is printed in none of your ${pieces.length} pieces.`;
}
