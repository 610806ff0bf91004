/** Text made safe to stand in HTML, between tags and in quoted attributes. */
export const escaped = (text: string): string =>
  text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** A whole page of the look of the application, small enough to need none of it. */
export const page = (title: string, body: string): string => `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Hoistside: ${escaped(title)}</title>
<link rel="stylesheet" href="/pair/page.css">
<main>
<h1>${escaped(title)}</h1>
${body}
</main>
<footer>Hoistside</footer>
</html>
`;

/** Ink on paper by day, chalk on slate by night; targets of 16 mm for gloves. */
export const PAGE_CSS = `:root {
  color-scheme: light dark;
  --paper: light-dark(#f8f6f0, #10181d);
  --ink: light-dark(#16242c, #e9e4d6);
  --open: light-dark(#852509, #ff9a7a);
}
body {
  margin: 0;
  background: var(--paper);
  color: var(--ink);
  font: 19px/1.5 Barlow, "DejaVu Sans", sans-serif;
}
main, footer {
  max-width: 38rem;
  margin: 1.5rem auto;
  padding: 0 1rem;
}
main {
  border: 2px solid var(--ink);
  padding-bottom: 1rem;
}
h1 {
  border-bottom: 1px solid var(--ink);
  font-size: 1.5rem;
}
label {
  display: block;
  margin: 1rem 0 0.25rem;
}
input, button, a.button {
  box-sizing: border-box;
  display: block;
  width: 100%;
  min-height: 16mm;
  border: 2px solid var(--ink);
  background: var(--paper);
  color: var(--ink);
  font: inherit;
  font-variant-numeric: tabular-nums;
  padding: 0.5rem 0.75rem;
}
button, a.button {
  margin-top: 1.5rem;
  background: var(--ink);
  color: var(--paper);
  text-align: center;
  text-decoration: none;
}
output {
  display: block;
  min-height: 3em;
  margin-top: 1rem;
  color: var(--open);
}
code {
  overflow-wrap: anywhere;
}
`;
