import Link from "next/link";
import type { ButtonHTMLAttributes, ReactNode } from "react";
import styles from "./button.module.css";

type Kind = "filled" | "outlined" | "quiet";

interface ButtonProps extends Omit<ButtonHTMLAttributes<HTMLButtonElement>, "className" | "style"> {
  children: ReactNode;
  /** `filled` is the next thing to do: one a screen. `quiet` is a word to tap. */
  kind?: Kind;
  /** Takes the width of its row, for thumbs. */
  wide?: boolean;
}

export function Button({ kind = "outlined", wide = false, type = "button", ...rest }: ButtonProps) {
  return <button {...rest} type={type} className={look(kind, wide)} />;
}

interface ButtonLinkProps {
  children: ReactNode;
  href: string;
  kind?: Kind;
  wide?: boolean;
}

/** A link that is the next thing to do. */
export function ButtonLink({ kind = "outlined", wide = false, href, children }: ButtonLinkProps) {
  return (
    <Link href={href} className={look(kind, wide)}>
      {children}
    </Link>
  );
}

/** Buttons side by side, the same width; under one another where there is no room. */
export function ButtonRow({ children }: { children: ReactNode }) {
  return <div className={styles.buttons}>{children}</div>;
}

function look(kind: Kind, wide: boolean): string {
  return `${styles.button} ${styles[kind]} ${wide ? styles.wide : ""}`;
}
