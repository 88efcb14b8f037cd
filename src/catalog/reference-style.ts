/** The reference pages' style sheet: system fonts, light and dark as the reader's system has it. */
export const REFERENCE_STYLE = `:root {
  color-scheme: light dark;
  --ink: #23211e;
  --paper: #fdfcfa;
  --line: #d6d0c6;
  --link: #7a3b12;
  --caution: #fff3d6;
}
@media (prefers-color-scheme: dark) {
  :root {
    --ink: #ece8e1;
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
}
a { color: var(--link); }
h1 { font-size: 1.6rem; }
h2 { font-size: 1.15rem; margin-top: 2rem; border-bottom: 1px solid var(--line); }
h3 { font-size: 1rem; margin-bottom: 0.3rem; }
.summary { font-size: 1.1rem; }
.caution { background: var(--caution); border-left: 0.3rem solid currentColor; padding: 0.6rem 0.9rem; }
code { font: 0.95em ui-monospace, monospace; overflow-wrap: anywhere; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; vertical-align: top; padding: 0.3rem 0.6rem 0.3rem 0; border-bottom: 1px solid var(--line); }
dt { margin-top: 0.5rem; font-weight: 600; }
dd { margin: 0 0 0 1.2rem; }
`;
