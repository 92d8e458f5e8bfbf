import type { Metadata } from "next";
import { Suspense } from "react";
import { PieceScreen } from "./piece-screen";

export const metadata: Metadata = { title: "Piece" };

export default function PiecePage() {
  return (
    <Suspense>
      <PieceScreen />
    </Suspense>
  );
}
