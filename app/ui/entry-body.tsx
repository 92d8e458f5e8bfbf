import { evaluate } from "@mdx-js/mdx";
import type { ReactNode } from "react";
import * as runtime from "react/jsx-runtime";
import remarkGfm from "remark-gfm";
import { loadGlossary } from "@/lib/glossary/load";
import styles from "./entry-body.module.css";
import { Sign } from "./sign";
import { Term } from "./term";

interface EntryBodyProps {
  /** The MDX body, checked to hold nothing but prose and the components below. */
  source: string;
}

/** The teaching prose of an entry, made into elements while the page is built. */
export async function EntryBody({ source }: EntryBodyProps) {
  if (source.trim() === "") return null;
  const { default: Body } = await evaluate(source, { ...runtime, remarkPlugins: [remarkGfm] });
  return (
    <div className={styles.body}>
      <Body components={{ Term: BodyTerm, Sign, Try, Caution, em: Printed }} />
    </div>
  );
}

/** `<Term to="legato">legato</Term>`: the language is that of the entry it leads to. */
function BodyTerm({ to, children }: { to: string; children: ReactNode }) {
  const entry = loadGlossary().bySlug.get(to);
  if (!entry) throw new Error(`<Term to="${to}"> names no entry. Run \`npm run check:content\`.`);
  return (
    <Term to={to} lang={entry.lang}>
      {children}
    </Term>
  );
}

/** A word in italic that is no link: printed matter whose language the prose does not say. */
function Printed({ children }: { children?: ReactNode }) {
  return <em className={styles.printed}>{children}</em>;
}

function Try({ children }: { children: ReactNode }) {
  return (
    <div className={styles.try}>
      <p className="lane-name">Try now</p>
      <div>{children}</div>
    </div>
  );
}

function Caution({ children }: { children: ReactNode }) {
  return (
    <div className={styles.caution}>
      <b>Take care: </b>
      {children}
    </div>
  );
}
