import { Sign } from "../ui/sign";
import { Term } from "../ui/term";
import type { Lead } from "../ui/ribbon/tell-measure";

/** A mark as it opens a row: the word in italic, the sign as its glyph, or what we say of it. */
export function LeadView({ lead }: { lead: Lead }) {
  if (lead.kind === "said") return <span>{lead.text}</span>;
  if (lead.kind === "term") {
    return (
      <Term lang={lead.lang} size="row">
        {lead.text}
      </Term>
    );
  }
  return lead.glyph === null ? (
    <Term lang={lead.lang} size="row">
      {lead.name}
    </Term>
  ) : (
    <Sign name={lead.glyph} label={lead.name} size="row" />
  );
}
