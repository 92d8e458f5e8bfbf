/** A section, ending or reading with the measures and sections inside it, in document order. */
export interface SectionNode {
  id: string | null;
  /** Measure indices and nested sections. */
  items: (number | SectionNode)[];
  /** Ids in playing order when the section spells it out. */
  order: string[] | null;
  /** Ids of the expansion elements, which a plist may name in place of their section. */
  expansionIds: string[];
}

/** A playing order this many times as long as the piece is a mistake. */
const MAX_GROWTH = 64;
const MAX_DEPTH = 50;
/** Sections visited; empty ones add no measures but take time. */
const MAX_STEPS = 100_000;

export function newSection(id: string | null): SectionNode {
  return { id, items: [], order: null, expansionIds: [] };
}

function index(node: SectionNode, byId: Map<string, SectionNode>): boolean {
  if (node.id !== null) byId.set(node.id, node);
  for (const id of node.expansionIds) byId.set(id, node);
  let spelledOut = node.order !== null;
  for (const item of node.items) {
    if (typeof item !== "number" && index(item, byId)) spelledOut = true;
  }
  return spelledOut;
}

export interface ExpandedOrder {
  /** Null when nothing spells an order out, or it cannot be followed. */
  measures: number[] | null;
  /** Why it cannot be followed, null when it can. */
  problem: string | null;
}

/**
 * Follows the expansions of all movements.
 * @param total measures in the score
 */
export function expandSections(movements: readonly SectionNode[], total: number): ExpandedOrder {
  const byId = new Map<string, SectionNode>();
  const spelledOut = movements.map((movement) => index(movement, byId)).some(Boolean);
  if (!spelledOut) return { measures: null, problem: null };
  const measures: number[] = [];
  let problem: string | null = null;
  let steps = 0;
  const follow = (node: SectionNode, depth: number): void => {
    if (problem !== null) return;
    if (depth > MAX_DEPTH || ++steps > MAX_STEPS || measures.length > total * MAX_GROWTH) {
      problem = "it leads in a circle";
      return;
    }
    if (node.order === null) {
      for (const item of node.items) {
        if (typeof item === "number") measures.push(item);
        else follow(item, depth + 1);
      }
      return;
    }
    for (const id of node.order) {
      const target = byId.get(id);
      if (target === undefined) problem ??= `it names "${id}", which is not there`;
      else follow(target === node ? { ...node, order: null } : target, depth + 1);
    }
  };
  for (const movement of movements) follow(movement, 0);
  return problem === null ? { measures, problem } : { measures: null, problem };
}
