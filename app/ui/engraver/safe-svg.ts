const FORBIDDEN = new Set(["script", "foreignobject", "iframe", "image", "animate", "set", "a"]);

/**
 * Takes the engraver's text in as a picture: parsed as XML, stripped of all
 * that could act, its black made the page's ink.
 * @returns null when it is no SVG
 */
export function safeSvg(text: string): SVGSVGElement | null {
  const parsed = new DOMParser().parseFromString(text, "image/svg+xml");
  const root = parsed.documentElement;
  if (root.nodeName.toLowerCase() !== "svg") return null;
  for (const element of [root, ...root.querySelectorAll("*")]) {
    if (FORBIDDEN.has(element.localName.toLowerCase())) {
      element.remove();
      continue;
    }
    for (const { name, value } of [...element.attributes]) {
      const acts = /^on/i.test(name);
      const leads = /href$/i.test(name) && !value.startsWith("#");
      if (acts || leads) element.removeAttribute(name);
      else if ((name === "color" || name === "fill" || name === "stroke") && value === "black") {
        element.setAttribute(name, "currentColor");
      }
    }
  }
  return document.importNode(root, true) as unknown as SVGSVGElement;
}
