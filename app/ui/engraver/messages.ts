/** What the page and its engraving worker say to one another. */
export type ToEngraver =
  | { type: "load"; key: string; bytes: Uint8Array; fileName: string; partIndex: number }
  | { type: "draw"; job: number; key: string; from: number; to: number; width: number };

export type FromEngraver =
  | { type: "loaded"; key: string }
  | { type: "drawn"; job: number; svg: string }
  | { type: "failed"; job: number | null; key: string; message: string };
