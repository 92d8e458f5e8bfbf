"use client";
import { useRouter, useSearchParams } from "next/navigation";
import { type KeyboardEvent, type ReactNode, useId, useMemo, useRef, useState } from "react";
import type { LookUpEntry } from "@/lib/lookup/look-up-index";
import { Field } from "./field";
import styles from "./look-up.module.css";
import { Notice } from "./notice";
import { Row, Rows } from "./rows";
import { Sign } from "./sign";
import { Term } from "./term";
import { useLookUp } from "./use-look-up";

const SHOWN = 6;

interface LookUpProps {
  /** What stands under the field while nothing is typed. */
  children: ReactNode;
}

/** The field that has the focus first: results while you type, arrows and Enter to open one. */
export function LookUp({ children }: LookUpProps) {
  const asked = useSearchParams().get("q") ?? "";
  const [query, setQuery] = useState(asked);
  const lookUp = useLookUp();
  const router = useRouter();
  const list = useRef<HTMLDivElement>(null);
  const field = useRef<HTMLInputElement>(null);
  const hint = useId();
  const results = useMemo(
    () => (typeof lookUp === "function" && query.trim() !== "" ? lookUp(query, SHOWN) : []),
    [lookUp, query],
  );

  const move = (event: KeyboardEvent, by: number) => {
    const links = [...(list.current?.querySelectorAll("a") ?? [])];
    const at = links.indexOf(document.activeElement as HTMLAnchorElement);
    const next = at + by;
    event.preventDefault();
    if (next < 0) field.current?.focus();
    else links[Math.min(next, links.length - 1)]?.focus();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "ArrowDown") move(event, 1);
    else if (event.key === "ArrowUp") move(event, -1);
    else if (event.key === "Escape") {
      setQuery("");
      field.current?.focus();
    }
  };

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys reach the field and links inside.
    <div onKeyDown={onKeyDown}>
      <search>
        <form
          onSubmit={(event) => {
            event.preventDefault();
            const first = results[0];
            if (first) router.push(`/terms/${first.slug}`);
          }}
        >
          <Field
            ref={field}
            label="Look up a word or sign"
            labelAt="quiet"
            look="engraved"
            type="search"
            name="q"
            placeholder="look up a word or sign"
            autoComplete="off"
            autoCapitalize="none"
            autoCorrect="off"
            spellCheck={false}
            enterKeyHint="go"
            autoFocus
            value={query}
            onChange={(event) => setQuery(event.target.value)}
            aria-controls={hint}
          />
        </form>
      </search>
      <div id={hint} ref={list} aria-live="polite" className={styles.results}>
        {typeof lookUp === "string" && query !== "" ? (
          <Notice kind="offline" title={lookUp} />
        ) : null}
        {results.length > 0 ? (
          <Rows label={`Found for ${query}`}>
            {results.map((result) => (
              <Row
                key={result.slug}
                href={`/terms/${result.slug}`}
                noteAt="below"
                lead={<Lead result={result} />}
                note={result.meaning}
              />
            ))}
          </Rows>
        ) : query.trim() !== "" && typeof lookUp === "function" ? (
          <Notice kind="empty" title={`Nothing is found for “${query.trim()}”.`}>
            Try part of the word, its meaning in plain English, or what the sign looks like.
          </Notice>
        ) : null}
      </div>
      {query.trim() === "" ? children : null}
    </div>
  );
}

function Lead({ result }: { result: LookUpEntry }) {
  return (
    <span className={styles.lead}>
      <Term lang={result.lang} size="row">
        {result.headword}
      </Term>
      {result.glyph ? <Sign name={result.glyph} label="" size="row" /> : null}
    </span>
  );
}
