/** The report's style: ink on paper, whatever the paper's colour; a verdict is told by words and border, never by colour alone. */
export const reportStyle = `
:root { color-scheme: light dark; --ink: #1a1a18; --paper: #fdfdfb; --rule: #8a8a84; }
@media (prefers-color-scheme: dark) { :root { --ink: #ececE6; --paper: #171716; --rule: #8f8f88; } }
* { box-sizing: border-box; }
body { margin: 0; background: var(--paper); color: var(--ink); font: 1rem/1.45 system-ui, sans-serif; }
main { max-width: 52rem; margin: 0 auto; padding: 1.5rem 1rem 3rem; }
h1 { font-size: 1.5rem; margin: 0; overflow-wrap: anywhere; }
h2 { font-size: 1.2rem; margin: 2rem 0 0.5rem; border-bottom: 2px solid var(--ink); overflow-wrap: anywhere; }
h3 { font-size: 1rem; margin: 1.2rem 0 0.4rem; }
p { margin: 0.4rem 0; }
.kind { font-variant: small-caps; letter-spacing: 0.06em; margin: 0; }
.verdict { border: 2px solid var(--ink); padding: 0.6rem 0.8rem; }
.verdict strong { display: inline-block; font-size: 1.3rem; text-transform: uppercase; margin-right: 0.6rem; }
.verdict.fail { border-width: 5px; }
.verdict.marginal { border-style: dashed; }
.verdict.inconclusive { border-style: dotted; }
.filed { display: flex; flex-wrap: wrap; gap: 0.1rem 1.6rem; margin: 0.6rem 0 0; }
.filed div { display: flex; gap: 0.5rem; }
.filed dt { font-weight: bold; }
.filed dd { margin: 0; overflow-wrap: anywhere; }
.reasons { margin: 0.6rem 0; }
.reasons div { display: grid; grid-template-columns: 7rem 1fr; gap: 0 0.8rem; margin: 0.3rem 0; }
.reasons dt { font-weight: bold; }
.reasons dd { grid-column: 2; margin: 0; overflow-wrap: anywhere; }
.table { overflow-x: auto; margin-top: 0.8rem; }
table { border-collapse: collapse; font-variant-numeric: tabular-nums; }
th, td { text-align: left; padding: 0.2rem 0.9rem 0.2rem 0; border-bottom: 1px solid var(--rule); vertical-align: top; }
.table td, .table th { white-space: nowrap; }
.pairs td { overflow-wrap: anywhere; }
.band { max-width: 32rem; }
.drawings { display: grid; grid-template-columns: 1fr 1fr; gap: 1rem; align-items: start; }
.drawing { display: block; max-width: 100%; height: auto; }
.notes { white-space: pre-wrap; }
.appendix details { border: 1px solid var(--rule); margin: 0.3rem 0; padding: 0.3rem 0.6rem; }
.working-given { display: grid; grid-template-columns: 1fr auto; gap: 0.1rem 1rem; margin: 0.4rem 0; }
.working-given > div { display: contents; }
.working-given dd { margin: 0; white-space: nowrap; }
.working-rule, .working-sources { font-size: 0.85em; }
.working-rule { display: block; }
.working-line { overflow-x: auto; overflow-y: hidden; padding: 0.1rem 0; }
.signature { display: flex; gap: 1rem; margin-top: 3.5rem; }
.signature span { flex: 1; border-top: 1px solid var(--ink); padding-top: 0.2rem; }
@media screen and (max-width: 34rem) {
  .table thead { display: none; }
  .table :is(table, tbody, tr, td) { display: block; }
  .table tr { border: 1px solid var(--rule); margin-bottom: 0.5rem; padding: 0.2rem 0.5rem; }
  .table td { border: 0; display: grid; grid-template-columns: 9rem 1fr; padding: 0.1rem 0; white-space: normal; }
  .table td::before { content: attr(data-label); font-weight: bold; }
  .drawings { grid-template-columns: 1fr; }
  .reasons div { grid-template-columns: 1fr; }
  .reasons dd { grid-column: 1; }
}
@page { margin: 11mm 13mm; }
@media print {
  :root { --ink: #000; --paper: #fff; --rule: #777; }
  body { font-size: 7.6pt; line-height: 1.28; }
  main { max-width: none; padding: 0; }
  h1 { font-size: 13pt; }
  h2 { font-size: 10.5pt; margin: 6pt 0 2pt; }
  h3 { font-size: 8.5pt; margin: 5pt 0 2pt; }
  .recording + .recording { break-before: page; }
  .appendix details::details-content { content-visibility: visible; block-size: auto; }
  .verdict, .drawing, .conditions .pairs, .signature { break-inside: avoid; }
  tr { break-inside: avoid; }
  .table { overflow: visible; margin-top: 4pt; }
  th, td { padding: 0.6pt 7pt 0.6pt 0; }
  .trace-drawing { max-height: 45mm; }
  .travel-map-drawing { max-height: 37mm; }
  .drawings .drawing { max-height: 45mm; }
  .cautions { columns: 2; column-gap: 6mm; }
  .cautions h2 { column-span: all; }
  .cautions ul { margin: 0; padding-left: 1.2em; }
  .signature { margin-top: 22pt; }
}
`;
