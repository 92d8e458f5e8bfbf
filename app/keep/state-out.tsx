"use client";
import { useState } from "react";
import { dateOfDay, dayOf } from "@/lib/memory/day";
import { stampNow } from "@/lib/store/clock";
import { exportState } from "@/lib/store/whole-state";
import { Button } from "../ui/button";
import { device } from "../ui/device";
import styles from "./keep.module.css";
import { stateFileName } from "./keep-words";

/** Everything out as one file. */
export function StateOut({ isEmpty }: { isEmpty: boolean }) {
  const [said, setSaid] = useState("");
  const onSave = async () => {
    try {
      const text = await exportState(await device());
      const name = stateFileName(dateOfDay(dayOf(stampNow())));
      download(new Blob([text], { type: "application/json" }), name);
      setSaid(`${name} is handed to the browser’s downloads.`);
    } catch (error) {
      setSaid(
        error instanceof Error ? error.message : "The file could not be made; try once more.",
      );
    }
  };
  return (
    <section aria-labelledby="out" className={styles.part}>
      <h2 id="out">Out, as one file</h2>
      <p>
        Everything above in one JSON file, scores included: to keep, or to carry to another device.
      </p>
      <Button kind="filled" disabled={isEmpty} onClick={() => void onSave()}>
        Save everything to a file
      </Button>
      <p role="status" className="small soft">
        {isEmpty ? "Nothing is kept yet." : said}
      </p>
    </section>
  );
}

function download(blob: Blob, name: string): void {
  const url = URL.createObjectURL(blob);
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  // Some browsers read the address only after the click is over.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
