import type { Entry } from "@/lib/glossary/schema";
import { Sign } from "./sign";
import { Term } from "./term";

/** How an entry opens a row: the term in italic, followed by its sign where it has one. */
export function EntryLead({ entry }: { entry: Pick<Entry, "headword" | "lang" | "sign"> }) {
  return (
    <>
      <Term lang={entry.lang} size="row">
        {entry.headword}
      </Term>
      {entry.sign?.glyph ? (
        <>
          {" "}
          <Sign name={entry.sign.glyph} label="" />
        </>
      ) : null}
    </>
  );
}
