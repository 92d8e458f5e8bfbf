/** Attributes of one start tag by name. No prototype, so any name is safe to look up. */
export type Attributes = Readonly<Record<string, string | undefined>>;

/**
 * What to do with one kind of element. `S` is the state a reader passes along.
 * Handlers are made once, at module load; none is made per element read.
 */
export interface ElementHandler<S> {
  /** At the start tag. Returns `false` to pass over everything inside. */
  open?: (state: S, attributes: Attributes, name: string) => unknown;
  /** At the end tag, with the text directly inside. Text is collected only where this is given. */
  text?: (state: S, text: string, name: string) => void;
  /** Each run of text directly inside, in place among the elements: for mixed content. */
  characters?: (state: S, text: string) => void;
  /** At the end tag, after `text`. */
  close?: (state: S, name: string) => void;
  /** Handlers for the elements inside; without a table they are passed over. */
  children?: ElementTable<S>;
}

export interface ElementTable<S> {
  readonly named: ReadonlyMap<string, ElementHandler<S>>;
  /** For names not in the table; without it they are passed over. */
  readonly other?: ElementHandler<S>;
}

export function elementTable<S>(
  handlers: Readonly<Record<string, ElementHandler<S>>>,
  other?: ElementHandler<S>,
): ElementTable<S> {
  const named = new Map(Object.entries(handlers));
  return other === undefined ? { named } : { named, other };
}

/** One table made of several; a name in a later table replaces the earlier one. */
export function joinTables<S>(...tables: readonly ElementTable<S>[]): ElementTable<S> {
  const named = new Map<string, ElementHandler<S>>();
  let other: ElementHandler<S> | undefined;
  for (const table of tables) {
    for (const [name, handler] of table.named) named.set(name, handler);
    other = table.other ?? other;
  }
  return other === undefined ? { named } : { named, other };
}
