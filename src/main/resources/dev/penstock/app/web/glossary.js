// One sentence about each term, from one glossary: heads of tables, names of figures and of inputs show it when they are pointed at.
let terms = [];
const said = new Map();

/** The sentence about the longest term that a text begins with or holds; empty if it holds none. */
export function sentence(text) {
  const plain = " " + text.toLowerCase().replace(/\([^)]*\)/g, "").replace(/[_:,/.-]/g, " ") + " ";
  const found = terms.find(([term]) => plain.includes(" " + term + " ") || plain.includes(" " + term + "s "));
  return found ? found[1] : "";
}

function explain(element) {
  const text = element.textContent;
  if (!said.has(text)) {
    said.set(text, sentence(text));
  }
  if (said.get(text) && (!element.title || element.dataset.explained !== undefined)) {
    element.dataset.explained = "";
    element.title = said.get(text);
  }
}

const TERMS = "th, dt, .field label";

try {
  const text = await (await fetch("/glossary.txt")).text();
  terms = text.trim().split("\n")
    .map((line) => line.split(/: (.*)/)).map(([term, about]) => [term.replaceAll("-", " "), about])
    .sort((a, b) => b[0].length - a[0].length);
  document.querySelectorAll(TERMS).forEach(explain);
  new MutationObserver((changes) => {
    for (const added of changes.flatMap((c) => [...c.addedNodes]).filter((n) => n.nodeType === 1)) {
      [...(added.matches(TERMS) ? [added] : []), ...added.querySelectorAll(TERMS)].forEach(explain);
    }
  }).observe(document.getElementById("main"), { childList: true, subtree: true });
} catch (error) {
  // The page works without its glossary.
}
