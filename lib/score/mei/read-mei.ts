import type { ReadLimits } from "../limits";
import type { Score } from "../model";
import type { XmlInput } from "../xml/walk-xml";
export function readMei(_source: XmlInput, _limits: ReadLimits): Score { throw new Error("not yet"); }
