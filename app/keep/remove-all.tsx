"use client";
import { useState } from "react";
import { forgetAll } from "@/lib/store/forget-all";
import { Button, ButtonRow } from "../ui/button";
import { device } from "../ui/device";
import { Dialog } from "../ui/dialog";
import { Notice } from "../ui/notice";
import styles from "./keep.module.css";

/** Removes everything from this device, after asking. */
export function RemoveAll() {
  const [asking, setAsking] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const onRemove = async () => {
    try {
      await forgetAll(await device());
      // The whole page anew: nothing of what was kept may live on in memory.
      window.location.assign("/keep");
    } catch (error) {
      setTrouble(
        error instanceof Error ? error.message : "It could not be removed; try once more.",
      );
    }
  };
  return (
    <section aria-labelledby="remove" className={styles.part}>
      <h2 id="remove">Remove everything</h2>
      <p>Answers, pieces and dates leave this device. It cannot be undone.</p>
      <div>
        <Button onClick={() => setAsking(true)}>Remove everything</Button>
      </div>
      <Dialog
        open={asking}
        onClose={() => setAsking(false)}
        title="Remove everything?"
        actions={
          <ButtonRow>
            <Button onClick={() => setAsking(false)}>Keep it</Button>
            <Button kind="filled" onClick={() => void onRemove()}>
              Remove it all
            </Button>
          </ButtonRow>
        }
      >
        <p>
          All answers, pieces and dates leave this device, and what was learnt is not known here any
          more. Save a file first if you may want it back.
        </p>
        {trouble === null ? null : <Notice kind="error" title={trouble} />}
      </Dialog>
    </section>
  );
}
