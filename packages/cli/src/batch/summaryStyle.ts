/** The look of the summary: ink on paper, as a report's; what became of a recording is told by words and border, never by colour alone. */
export const summaryStyle = `
:root { color-scheme: light dark; --ink: #1a1a18; --paper: #fdfdfb; --rule: #8a8a84; --soft: #5c5c56; }
@media (prefers-color-scheme: dark) { :root { --ink: #ececE6; --paper: #171716; --rule: #8f8f88; --soft: #b4b4ac; } }
* { box-sizing: border-box; }
body { margin: 0; background: var(--paper); color: var(--ink); font: 1rem/1.45 system-ui, sans-serif; }
main { max-width: 72rem; margin: 0 auto; padding: 1.5rem 1rem 3rem; }
h1 { font-size: 1.5rem; margin: 0; overflow-wrap: anywhere; }
h2 { font-size: 1.2rem; margin: 2rem 0 0.2rem; border-bottom: 2px solid var(--ink); }
p { margin: 0.4rem 0; max-width: 52rem; }
.kind { font-variant: small-caps; letter-spacing: 0.06em; margin: 0; }
.counts { display: flex; flex-wrap: wrap; gap: 0.5rem; margin: 1rem 0; padding: 0; list-style: none; }
.counts li { flex: 1 1 8rem; border: 2px solid var(--ink); padding: 0.3rem 0.7rem; }
.counts a { color: inherit; display: block; }
.counts b { display: block; font-size: 1.6rem; line-height: 1.2; font-variant-numeric: tabular-nums; }
.counts .fail { border-width: 5px; padding: calc(0.3rem - 3px) calc(0.7rem - 3px); }
.counts .marginal { border-style: dashed; }
.counts .inconclusive { border-style: dotted; }
.counts .not-judged { border-style: double; border-width: 4px; padding: calc(0.3rem - 2px) calc(0.7rem - 2px); }
.recordings { list-style: none; margin: 0; padding: 0; }
.recordings > li { display: grid; grid-template-columns: 180px minmax(0, 1fr) minmax(0, 26rem); gap: 0.2rem 1.2rem; padding: 0.7rem 0; border-bottom: 1px solid var(--rule); break-inside: avoid; }
.recordings > li.untraced { grid-template-columns: minmax(0, 1fr); }
.recordings h3 { font-size: 1rem; margin: 0; overflow-wrap: anywhere; }
.recordings p { margin: 0.15rem 0; overflow-wrap: anywhere; }
.filed { color: var(--soft); font-size: 0.9rem; }
.trace { display: block; max-width: 100%; height: auto; border: 1px solid var(--rule); }
.trace polyline { fill: none; stroke: currentColor; stroke-width: 1; stroke-linejoin: round; }
.trace .window { fill: currentColor; fill-opacity: 0.12; }
.trace .worst { stroke: currentColor; stroke-width: 5; stroke-opacity: 0.3; }
.values { display: grid; grid-template-columns: 9rem minmax(0, 1fr); gap: 0 0.8rem; margin: 0; font-size: 0.9rem; font-variant-numeric: tabular-nums; align-content: start; }
.values dt { color: var(--soft); }
.values dd { margin: 0; overflow-wrap: anywhere; }
.cautions { margin-top: 2rem; }
@media screen and (max-width: 48rem) {
  .recordings > li, .recordings > li.untraced { grid-template-columns: minmax(0, 1fr); }
  .trace { width: 100%; max-width: 22rem; }
}
@page { margin: 11mm 13mm; }
@media print {
  :root { --ink: #000; --paper: #fff; --rule: #777; --soft: #333; }
  body { font-size: 8pt; line-height: 1.3; }
  main { max-width: none; padding: 0; }
}
`;
