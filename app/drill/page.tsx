import type { Metadata } from "next";
import { Suspense } from "react";
import { DrillScreen } from "./drill-screen";

export const metadata: Metadata = { title: "Drill" };

export default function DrillPage() {
  return (
    <Suspense>
      <DrillScreen />
    </Suspense>
  );
}
