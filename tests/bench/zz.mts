import { benchLookup } from "./bench-lookup";
for(const r of await benchLookup()) console.log(Object.values(r).join(" | "));
