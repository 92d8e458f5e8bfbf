"use client";
import { type ReactNode, useEffect, useId, useRef } from "react";
import { Button } from "./button";
import styles from "./dialog.module.css";

interface DialogProps {
  open: boolean;
  /** Called by Escape, by the close button and by a tap beside the sheet. */
  onClose: () => void;
  title: string;
  children: ReactNode;
  /** Buttons at the foot, within thumb reach. */
  actions?: ReactNode;
}

/**
 * A sheet from the bottom edge on a phone, a leaf at the right on a desk. The
 * browser's own dialog keeps the focus inside and gives it back on closing.
 */
export function Dialog({ open, onClose, title, children, actions }: DialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();

  useEffect(() => {
    const element = dialog.current;
    if (!element) return;
    if (open && !element.open) element.showModal();
    if (!open && element.open) element.close();
  }, [open]);

  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the tap beside the sheet doubles Escape and the close button
    <dialog
      ref={dialog}
      className={styles.dialog}
      aria-labelledby={titleId}
      onClose={onClose}
      onClick={(event) => {
        if (event.target === dialog.current) onClose();
      }}
    >
      <div className={styles.leaf}>
        <header className={styles.head}>
          <h2 id={titleId}>{title}</h2>
          <Button kind="quiet" onClick={onClose}>
            Close
          </Button>
        </header>
        <div className={styles.body}>{children}</div>
        {actions === undefined ? null : <footer className={styles.actions}>{actions}</footer>}
      </div>
    </dialog>
  );
}
