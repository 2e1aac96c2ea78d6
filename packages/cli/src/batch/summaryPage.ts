import { formatQuantity } from '@truesweep/core';
import type { EndReading, JudgedRecording, RecordingResult } from '@truesweep/jobs/node';
import {
  type BatchCounts,
  batchOutcomeLabels,
  batchOutcomeMeanings,
  batchSentence,
  batchWords,
  causeLabels,
  causeMeanings,
  cautions,
  checkLabels,
  findingLabels,
  marginSentence,
  moreRecordingsSentence,
  refusalSentence,
  scoreLabels,
  spotSentence,
  sweepCautions,
  visibleText,
} from '@truesweep/wording';
import { outcomeOf, outcomes } from './attentionOrder.js';
import { smallTraceSvg } from './smallTraceSvg.js';
import { summaryStyle } from './summaryStyle.js';

/** Nothing is fetched and no script runs, whatever names and notes hold. */
const policy = "default-src 'none'; style-src 'unsafe-inline'";

/**
 * What became of a batch as one page that needs nothing else, what needs attention first.
 *
 * @param first Those that are shown, in their order.
 */
export function summaryPage(counts: BatchCounts, first: readonly RecordingResult[]): string {
  const all = outcomes.reduce((sum, outcome) => sum + counts[outcome], 0);
  const groups = outcomes.map((outcome) => ({
    outcome,
    shown: first.filter((result) => outcomeOf(result) === outcome),
  }));
  const page = `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<title>${batchWords.title}</title>
<style>${summaryStyle}</style>
</head>
<body>
<main>
<header>
<p class="kind">${batchWords.kind}</p>
<h1>${batchWords.title}</h1>
<p>${escaped(batchSentence(counts))} ${batchWords.order}</p>
<ul class="counts">
${outcomes.map((outcome) => countItem(outcome, counts[outcome])).join('\n')}
</ul>
<p>${batchWords.traces}</p>
</header>
${groups
  .filter(({ shown }) => shown.length > 0)
  .map(
    ({ outcome, shown }) => `<section aria-labelledby="${outcome}">
<h2 id="${outcome}">${batchOutcomeLabels[outcome]}</h2>
<p>${batchOutcomeMeanings[outcome]}</p>
<ul class="recordings">
${shown.map(item).join('\n')}
</ul>
${counts[outcome] > shown.length ? `<p>${moreRecordingsSentence(counts[outcome] - shown.length)}</p>` : ''}
</section>`,
  )
  .join('\n')}
${all > first.length && groups.some(({ outcome, shown }) => shown.length === 0 && counts[outcome] > 0) ? `<p>${moreRecordingsSentence(all - first.length)}</p>` : ''}
<section class="cautions">
<h2>${scoreLabels.cautions}</h2>
<ul>
${sweepCautions()
  .map((one) => `<li>${escaped(cautions[one])}</li>`)
  .join('\n')}
</ul>
</section>
</main>
</body>
</html>
`;
  return visibleText(page, '\n');
}

function countItem(outcome: keyof BatchCounts, count: number): string {
  const text = `<b>${count}</b>${batchOutcomeLabels[outcome]}`;
  return `<li class="${outcome}">${count > 0 ? `<a href="#${outcome}">${text}</a>` : text}</li>`;
}

function item(result: RecordingResult): string {
  const { file, sensor, date, note } = result;
  const filed = [sensor, date, note].filter((text) => text !== undefined && text !== '');
  const heading = `<h3>${escaped(file)}</h3>${filed.length > 0 ? `<p class="filed">${escaped(filed.join(' · '))}</p>` : ''}`;
  if (!('verdict' in result)) {
    return `<li class="untraced"><div>${heading}<p>${escaped(refusalSentence(result.refused))}</p></div></li>`;
  }
  const { causes, worst } = result;
  const cause = causes[0] && causeMeanings[causes[0].cause];
  const spot =
    worst?.spot &&
    worst.travel !== undefined &&
    spotSentence({
      travel: formatQuantity(worst.travel, '%', { digits: 2 }),
      seen: String(worst.spot.seen),
      passes: String(worst.spot.passes),
    });
  const said = [...(cause ? [cause] : []), ...(spot ? [spot] : [])];
  return `<li><div>${smallTraceSvg(result)}</div><div>${heading}${said.map((one) => `<p>${escaped(one)}</p>`).join('')}</div>${values(result)}</li>`;
}

function values(result: JudgedRecording): string {
  const { closed, open, causes, confidence, worst, hysteresis, noise, visible, nearest } = result;
  const percent = (part: number) => formatQuantity(part, '%', { digits: 2 });
  const volts = (value: number) => formatQuantity(value, 'V');
  const end = (reading?: EndReading) =>
    reading &&
    (reading.uncertainty === undefined
      ? volts(reading.volts)
      : `${volts(reading.volts)} ± ${volts(2 * reading.uncertainty)}`);
  const cause = causes[0];
  const place =
    worst?.travel === undefined ? '' : `, ${percent(worst.travel)} ${batchWords.ofTravel}`;
  const rows: readonly (readonly [string, string | undefined])[] = [
    [batchWords.cause, cause && `${causeLabels[cause.cause]} (${percent(cause.weight)})`],
    [batchWords.sure, confidence === undefined ? undefined : percent(confidence)],
    [batchWords.worst, worst && `${findingLabels[worst.kind]}${place}, ${volts(worst.depth)}`],
    [batchWords.findings, result.findings > 0 ? String(result.findings) : undefined],
    [batchWords.closed, end(closed)],
    [batchWords.open, end(open)],
    [batchWords.hysteresis, hysteresis === undefined ? undefined : volts(hysteresis)],
    [batchWords.noise, `${volts(noise)} ${batchWords.deviation}`],
    [batchWords.visible, volts(visible)],
    [batchWords.nearest, nearest && marginSentence(checkLabels[nearest.check], nearest.margin)],
  ];
  const shown = rows.flatMap(([label, value]) =>
    value === undefined ? [] : [`<dt>${label}</dt><dd>${escaped(value)}</dd>`],
  );
  return `<dl class="values">${shown.join('')}</dl>`;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
}
