/**
 * The look of the element. From the page around it come the colours, unless an attribute says light or dark; nothing
 * else is inherited but what a reader sets for all pages.
 */
import {STEP_RULES, scaleCss} from '../shared/margins/scale.js';
import {MARK_RULES} from '../shared/margins/marks.js';
import tokens from '../tokens.css';

/** Letters and ground are the page's; lines and quiet text are shades of them. A page may name its own. */
const AROUND = `
.root[data-theme='auto'] {
  color: var(--jointwise-ink, inherit); color-scheme: inherit;
  --ink: currentColor;
  --card: var(--jointwise-ground, var(--ground));
  --accent: var(--jointwise-accent, currentColor); --accent-ink: var(--card);
  --sunk: color-mix(in srgb, currentColor 6%, transparent);
  --soft: color-mix(in srgb, currentColor 80%, transparent);
  --line: color-mix(in srgb, currentColor 20%, transparent);
  --edge: color-mix(in srgb, currentColor 55%, transparent);
}
`;

const RULES = `
:host { display: block !important; overflow: visible !important; }
:host([hidden]) { display: none !important; }
.root {
  --head: 92px; --least: 44px; --row: 46px;
  --hatch: repeating-linear-gradient(135deg, var(--refused) 0 4px, var(--refused-line) 4px 5px);
  display: block; container-type: inline-size; text-align: start; font-family: var(--figures);
  font-variant-numeric: tabular-nums;
}
.root:not([data-theme='auto']) { color: var(--ink); }
.root[data-compact] { --least: 40px; --row: 28px; }
.card {
  font-size: 0.9375em; line-height: 1.45; background: var(--card); border: 1px solid var(--line); border-radius: 8px;
  overflow: hidden;
}
*, *::before, *::after { box-sizing: border-box; }
button, select { font: inherit; color: inherit; }
h2, h3, p, ul, ol { margin: 0; padding: 0; }
[hidden] { display: none !important; }
:focus-visible {
  outline: 3px solid var(--accent); outline-offset: -2px; border-radius: 4px; position: relative; z-index: 1;
}
a { color: var(--accent); }
small { font-size: 0.85em; }
.soft { color: var(--soft); font-size: 0.87em; }
.unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
.bar { display: flex; gap: 12px; align-items: center; height: 60px; padding: 0 10px; }
.bar > div { flex: 1; min-width: 0; }
.bar h2 { font-size: 1em; line-height: 1.2; max-height: 2.4em; overflow: hidden; }
.bar p { white-space: nowrap; overflow: hidden; text-overflow: ellipsis; }
.bar label { display: flex; gap: 8px; align-items: center; flex: none; font-size: 0.87em; }
.key {
  display: flex; gap: 10px; align-items: center; height: 44px; padding: 0 10px 6px; font-size: 0.87em;
  border-bottom: 1px solid var(--line);
}
.key span { flex: none; }
.key ul { display: flex; flex: 1; max-width: 640px; height: 100%; list-style: none; }
.key li {
  display: grid; align-content: center; flex: 1; min-width: 0; padding: 0 2px; text-align: center; font-size: 0.87em;
  line-height: 1.15;
}
select, .close, .again {
  min-height: 44px; padding: 0 10px; background: var(--card); border: 1px solid var(--edge); border-radius: 8px;
  cursor: pointer;
}
.scroll { position: relative; overflow: auto hidden; overscroll-behavior-x: contain; scroll-padding-left: var(--head); }
table {
  border-collapse: separate; border-spacing: 0; table-layout: fixed; width: 100%;
  min-width: calc(var(--head) + var(--columns) * var(--least));
}
th, td { padding: 0; font-weight: inherit; }
thead th {
  height: 40px; border-bottom: 1px solid var(--edge); font-size: 0.93em; font-weight: 650; line-height: 1.05;
  text-align: center;
}
thead th small { display: block; font-weight: 400; font-size: 0.75em; color: var(--soft); }
th:first-child {
  position: sticky; left: 0; z-index: 2; width: var(--head); background: var(--card);
  border-right: 1px solid var(--edge);
}
tbody th {
  height: var(--row); padding: 0 4px 0 8px; text-align: left; font-size: 0.82em; line-height: 1.15; font-weight: 600;
  overflow-wrap: anywhere;
}
tbody th span { display: block; max-height: var(--row); overflow: hidden; }
.empty { display: block; height: var(--row); border-radius: 5px; background-color: var(--sunk); }
td[data-row] {
  height: var(--row); border: 1px solid var(--card); border-radius: 5px; text-align: center; cursor: pointer;
  font-size: 0.87em; font-stretch: condensed; font-weight: 600; line-height: 16px; letter-spacing: -0.02em;
  white-space: nowrap;
}
td[data-long] { font-size: 0.7em; font-weight: 500; letter-spacing: -0.03em; }
td[data-row]:hover { outline: 1px solid currentColor; outline-offset: -1px; }
td[aria-expanded='true'] {
  outline: 3px solid var(--accent); outline-offset: -2px; position: relative; z-index: 1;
}
[data-step='refused'] { background: var(--hatch); color: var(--refused-ink); font-weight: 500; }
.open > td { border-block: 2px solid var(--accent); }
.derivation { position: sticky; left: 0; width: calc(100cqi - 2px); padding: 10px 14px 16px; }
.head { display: flex; gap: 12px; align-items: center; }
.head h3 { flex: 1; font-size: 1.07em; }
.head h3:focus { outline: none; }
.verdict { margin: 6px 0 10px; }
.failed { margin: 0 0 10px; padding-left: 1.2em; color: var(--alarm); }
details { border-top: 1px solid var(--line); }
summary {
  min-height: 44px; padding: 6px 2px; display: flex; flex-wrap: wrap; gap: 4px 10px; align-items: center;
  cursor: pointer;
}
summary::before { content: '▸'; color: var(--accent); }
details[open] > summary::before { content: '▾'; }
summary b { padding: 2px 8px; border-radius: 5px; }
.binds { font-weight: 650; text-decoration: underline; }
details > details { margin-left: 14px; }
.share {
  position: relative; flex: 1 0 100%; height: 12px; margin: 0 0 4px; overflow: hidden; background: var(--sunk);
  border: 1px solid var(--edge); border-radius: 4px;
}
.share i { display: block; height: 100%; width: var(--taken); border-right: 1px solid currentColor; }
.share::after {
  content: ''; position: absolute; inset: 0 auto 0 calc(var(--limit) - 1px); width: 2px; background: currentColor;
}
details > ul { padding: 0 0 8px 1.2em; }
ol { list-style: none; }
ol > li { padding: 8px 0 8px 14px; border-top: 1px solid var(--line); }
ol ul { list-style: none; font-size: 0.93em; }
.formula { overflow-x: auto; padding: 6px 0; }
.formula math { width: max-content; margin: 0; }
math { font-family: math, 'STIX Two Math', 'Cambria Math', 'Latin Modern Math', 'DejaVu Math TeX Gyre', serif; }
mtd { text-align: left; }
var { font-style: italic; font-family: 'STIX Two Math', 'Latin Modern Math', Cambria, 'DejaVu Serif', serif; }
sub { font-size: 0.75em; line-height: 0; }
.result { font-weight: 650; }
.foot { padding: 8px 10px 10px; border-top: 1px solid var(--line); font-size: 0.87em; }
.foot > * + * { margin-top: 6px; }
.status { min-height: 1lh; }
.marks-list {
  display: grid; grid-template-columns: repeat(auto-fill, minmax(240px, 1fr)); gap: 2px 16px; padding-bottom: 8px;
  list-style: none;
}
details > .marks-list { padding-left: 0; }
.marks-list li { display: grid; grid-template-columns: 4.5em 1fr; }
.conditions { columns: 240px; }
.trouble { min-height: var(--room); padding: 16px; background: var(--alarm-wash); color: var(--ink); }
.trouble p + button { margin-top: 12px; }
.ends { display: flex; flex-wrap: wrap; gap: 4px 16px; align-items: center; justify-content: space-between; }
.ends a { display: inline-flex; align-items: center; min-height: 44px; }
@container (max-width: 480px) {
  .bar { height: 84px; }
  .bar p { white-space: normal; }
  .status { min-height: 2lh; }
  .key span { display: none; }
  .key li { font-size: 0.8em; }
}
@media print {
  .root { color-scheme: light; }
  * { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
  select, .close { border: 0; }
}
`;

const own = new CSSStyleSheet();
own.replaceSync(
  [
    '.root { all: initial; }',
    tokens.replaceAll(':root', '.root'),
    scaleCss('.root'),
    STEP_RULES,
    MARK_RULES,
    RULES,
    AROUND,
  ].join('\n'),
);

/** For the element's root; a sheet made by a script is no inline style, so a strict policy of the host lets it be. */
export const sheets = [own];
