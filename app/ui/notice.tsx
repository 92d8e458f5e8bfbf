import type { ReactNode } from "react";
import styles from "./notice.module.css";

interface NoticeProps {
  /** `empty`: nothing here yet. `error`: it could not be done. `offline`: it waits for the network. */
  kind: "empty" | "error" | "offline";
  /** What is so, in one short sentence. */
  title: string;
  /** What to do now; say where and how. */
  children?: ReactNode;
  /** The one thing to press. */
  action?: ReactNode;
}

/** Said of the whole kind, before the title, so that the state does not hang on the shape of a line. */
const SPOKEN = { empty: "", error: "Not done. ", offline: "No network. " } as const;

/** A state in words: what is so, what to do. The line at its left differs in shape, not colour. */
export function Notice({ kind, title, children, action }: NoticeProps) {
  return (
    <div
      className={`${styles.notice} ${styles[kind]}`}
      role={kind === "error" ? "alert" : undefined}
    >
      <p className={styles.title}>
        {SPOKEN[kind] === "" ? null : <span className={styles.kind}>{SPOKEN[kind]}</span>}
        {title}
      </p>
      {children === undefined ? null : <div className={styles.text}>{children}</div>}
      {action === undefined ? null : <div className={styles.action}>{action}</div>}
    </div>
  );
}
