/** The reference pages' style sheet: system fonts, light and dark as the reader's system has it. */
export const REFERENCE_STYLE = `:root {
  color-scheme: light dark;
  --ink: #23211e;
  --quiet: #625b52;
  --paper: #fdfcfa;
  --line: #d6d0c6;
  --link: #7a3b12;
  --caution: #fff3d6;
}
@media (prefers-color-scheme: dark) {
  :root {
    --ink: #ece8e1;
    --quiet: #b5aca0;
    --paper: #1f1d1a;
    --line: #4a463f;
    --link: #f0b487;
    --caution: #40351a;
  }
}
body {
  font: 16px/1.55 system-ui, sans-serif;
  color: var(--ink);
  background: var(--paper);
  max-width: 46rem;
  margin: 0 auto;
  padding: 1rem;
  overflow-wrap: break-word;
}
a { color: var(--link); }
h1 { font-size: 1.6rem; margin: 0.3rem 0 0.6rem; }
h2 { font-size: 1.15rem; margin-top: 2rem; border-bottom: 1px solid var(--line); }
h3 { font-size: 1rem; margin: 1.2rem 0 0.3rem; }
header nav { display: flex; flex-wrap: wrap; gap: 0.2rem 1.2rem; padding-bottom: 0.5rem; border-bottom: 1px solid var(--line); }
.step { margin: 1.2rem 0 0; }
.summary { font-size: 1.1rem; }
.quiet { color: var(--quiet); font-size: 0.9rem; font-weight: 400; }
.caution { background: var(--caution); border-left: 0.3rem solid currentColor; padding: 0.6rem 0.9rem; }
code { font: 0.95em ui-monospace, monospace; overflow-wrap: anywhere; }
.call code { font-weight: 600; }
figure { margin: 1.5rem 0; max-width: 27rem; }
figure svg { display: block; width: 100%; height: auto; }
figcaption { color: var(--quiet); font-size: 0.9rem; margin-top: 0.3rem; }
dt { margin-top: 0.5rem; font-weight: 600; }
dd { margin: 0 0 0 1.2rem; }
.pairs > div { padding: 0.35rem 0; border-bottom: 1px solid var(--line); }
.pairs dt { margin: 0; }
.pairs dd { margin: 0; }
.steps, .examples { list-style: none; padding: 0; }
.steps { display: flex; flex-wrap: wrap; gap: 0.2rem 1.2rem; }
.examples li { padding: 0.35rem 0; border-bottom: 1px solid var(--line); }
.cells { overflow-x: auto; }
table { border-collapse: collapse; }
td { padding: 0.1rem 0.6rem; border: 1px solid var(--line); font-size: 0.9rem; }
summary { padding: 0.35rem 0; cursor: pointer; }
details { border-bottom: 1px solid var(--line); }
details .pairs { margin: 0 0 0.8rem 1.1rem; }
@media (min-width: 36rem) {
  .pairs > div { display: grid; grid-template-columns: 11rem 1fr; column-gap: 1rem; }
  .pairs dt { grid-row: 1 / span 9; }
  .pairs dd { grid-column: 2; }
}
@media print {
  header { display: none; }
}
`;
