declare module "verovio/wasm" {
  const createVerovioModule: () => Promise<unknown>;
  export default createVerovioModule;
}
declare module "verovio/wasm-hum" {
  const createVerovioModule: () => Promise<unknown>;
  export default createVerovioModule;
}
declare module "verovio/esm" {
  export class VerovioToolkit {
    constructor(module: unknown);
    loadData(data: string): boolean;
    setOptions(options: Record<string, unknown>): void;
    select(selection: Record<string, string>): boolean;
    redoLayout(): void;
    getPageCount(): number;
    renderToSVG(page: number): string;
    renderToTimemap(options?: Record<string, unknown>): { tstamp: number; measureOn?: string }[];
    getMEI(options?: Record<string, unknown>): string;
    getLog(): string;
  }
}
