import type { Attributes, ElementHandler } from "./elements";

/** One element with what is inside it, in document order. Used for small pieces of a file only. */
export interface XmlElement {
  name: string;
  attributes: Attributes;
  children: (XmlElement | string)[];
}

/** Where a tree under construction hangs in a reader's state. */
export interface TreeHolder {
  /** Elements open now, outermost first. */
  tree: XmlElement[];
}

function openBranch(state: TreeHolder, attributes: Attributes, name: string): void {
  const element: XmlElement = { name, attributes, children: [] };
  state.tree[state.tree.length - 1]?.children.push(element);
  state.tree.push(element);
}

function addCharacters(state: TreeHolder, text: string): void {
  state.tree[state.tree.length - 1]?.children.push(text);
}

const BRANCH: ElementHandler<TreeHolder> = {
  open: openBranch,
  characters: addCharacters,
  close: (state) => {
    state.tree.pop();
  },
};
BRANCH.children = { named: new Map(), other: BRANCH };

/** Handler that builds one element with all inside it and hands it over at its end. */
export function treeHandler<S extends TreeHolder>(
  done: (state: S, element: XmlElement) => void,
): ElementHandler<S> {
  return {
    open: (state, attributes, name) => {
      state.tree = [];
      openBranch(state, attributes, name);
    },
    characters: addCharacters,
    close: (state) => {
      const element = state.tree.pop();
      if (element !== undefined) done(state, element);
    },
    children: BRANCH.children,
  };
}
