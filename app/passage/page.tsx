import type { Metadata } from "next";
import { Suspense } from "react";
import { PassageScreen } from "./passage-screen";

export const metadata: Metadata = { title: "Passage" };

export default function PassagePage() {
  return (
    <Suspense>
      <PassageScreen />
    </Suspense>
  );
}
