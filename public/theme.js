// Sets the reader's own choice of light or dark before the first paint. A file, not inline, so that a strict content policy holds.
(() => {
  try {
    const chosen = localStorage.getItem("theme");
    if (chosen === "light" || chosen === "dark") document.documentElement.dataset.theme = chosen;
  } catch {
    // Storage is shut off: the device's own setting stands.
  }
})();
