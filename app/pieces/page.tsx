import type { Metadata } from "next";
import { loadPieces } from "@/lib/glossary/pieces";
import { PiecesScreen } from "./pieces-screen";

export const metadata: Metadata = {
  title: "Pieces",
  description:
    "Open your audition piece and see what it asks, measure by measure. It never leaves this device.",
};

export default function PiecesPage() {
  return <PiecesScreen demos={loadPieces()} />;
}
