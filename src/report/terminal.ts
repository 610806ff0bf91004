import type { Answer, Question } from '../engine/index.ts';
import { formulaText } from '../formula/index.ts';
import { lackWithKnown } from '../quantity/index.ts';
import { figureText } from './figure-text.ts';
import type {
  FindingGroup,
  ReportAnswer,
  ReportHoist,
  ReportModel,
  ReportNext,
  ReportNextReading,
  ReportOpen,
  ReportOut,
  ReportSampled,
  ReportSampledOut,
  ShownNumber,
  UnknownGroup,
} from './model.ts';
import { type Beside, reportAnswer } from './report-answer.ts';
import { padEnd, padStart, plain, textTable, WIDTH, wrap } from './text-layout.ts';
import { LEVEL_WORDS, numberText, percentText, SPREAD_RULE } from './wording.ts';

/** Columns of a bar that is the whole variance. */
const SHARE_BAR = 24;
/** Places of one finding, and things of one kind not known, that a summary prints before it counts the rest. */
const LISTED = 6;
const RULE = '─'.repeat(WIDTH);

/** An answer for the terminal: results, findings, working, sources and cautions. */
export function answerText(
  answer: Answer,
  question?: Question,
  subject = '',
  beside: Beside = {},
): string {
  const a = reportAnswer(answer, question, subject, beside);
  return lines(
    head(a),
    numberLines(a.outs.map((o) => ({ ...o, word: o.decision?.says }))),
    a.outs.flatMap(outRemarks),
    block('By Monte Carlo', a.sampled ? sampledLines(a.sampled) : []),
    a.figures.flatMap((f) => ['', ...figureText(f)]),
    a.tables.flatMap((t) => [[''], [t.title], textTable(t.columns, t.rows)].flat()),
    block('Findings', findingLines(a.findings)),
    block('Working', workingLines(a)),
    block('Says who', saidLines(a)),
    block('Assumptions', a.assumptions.flatMap(bullet)),
    block(
      'Sources',
      a.sources.flatMap((s) => bullet(`${s.at ? `${s.title}, ${s.at}` : s.title} (${s.status})`)),
    ),
    block(
      'Cautions',
      a.cautions.flatMap((c) => bullet(`${c.words} (${c.source})`)),
    ),
    ['', SPREAD_RULE, ...(a.basis ? wrap(a.basis) : [])],
  );
}

/** A report in short for the terminal: every result, claims, what is not known, findings. */
export function summaryText(model: ReportModel): string {
  return lines(
    titleLines(model),
    model.summary.flatMap((s) => [
      ...wrap(s.subject === '' ? s.title : `${s.title}, ${s.subject}`),
      ...numberLines(s.outs),
      ...(s.open === '' ? [] : wrap(s.open, '  ')),
      '',
    ]),
    block('Claims', model.claims.flatMap(claimLines), false),
    block('Measure next', model.next ? nextLines(model.next) : [], false),
    block('On the hoist', model.hoist ? hoistLines(model.hoist) : [], false),
    block(
      'Not known',
      model.unknown.flatMap((u) => itemLines(unknownHead(u), u.items)),
      false,
    ),
    block('Findings', findingLines(model.findings, LISTED), false),
    block(
      'Cautions',
      model.cautions.flatMap((c) => bullet(`${c.words} (${c.source})`)),
      false,
    ),
    wrap(`${SPREAD_RULE} ${model.roundingRule}`),
  );
}

const lines = (...parts: readonly (readonly string[])[]): string => `${parts.flat().join('\n')}\n`;
const bullet = (text: string): string[] => wrap(text, '  - ', '    ');

function block(title: string, body: readonly string[], above = true): string[] {
  if (body.length === 0) return [];
  return above ? ['', title, ...body] : [title, ...body, ''];
}

function head(a: ReportAnswer): string[] {
  const title = a.subject === '' ? a.title : `${a.title}, ${a.subject}`;
  return [...wrap(title), ...wrap(a.wording), ''];
}

function titleLines(model: ReportModel): string[] {
  const { study, rates } = model;
  const words = [
    study.title,
    study.condition,
    `revision ${study.revision}`,
    rates ? `rates ${rates.version} of ${rates.date}` : 'no rates',
    model.date,
    study.invented ? 'INVENTED DATA' : '',
  ];
  return [...wrap(words.filter((w) => w !== '').join(' · ')), RULE];
}

interface NumberLine {
  readonly meaning: string;
  readonly shown: ShownNumber;
  readonly word?: string | undefined;
}

/** Meaning, value, spread and unit in columns, values aligned at their right end. */
function numberLines(outs: readonly NumberLine[]): string[] {
  const room = WIDTH - 20 - Math.max(0, ...outs.map((o) => [...wordOf(o)].length));
  const cells = outs.map((o) => ({
    meaning: wrap(o.meaning, '', '', Math.min(Math.max(room, 28), 52)),
    value: plain(o.shown.value),
    spread: spreadCell(o.shown),
    unit: plain(o.shown.symbol),
    word: wordOf(o),
  }));
  const width = (of: (c: (typeof cells)[number]) => string): number =>
    Math.max(0, ...cells.map((c) => [...of(c)].length));
  const meaningWidth = Math.max(0, ...cells.flatMap((c) => c.meaning.map((m) => [...m].length)));
  const [value, spread, unit] = [
    width((c) => c.value),
    width((c) => c.spread),
    width((c) => c.unit),
  ];
  return cells.flatMap((c) => [
    ...c.meaning.slice(0, -1).map((m) => `  ${m}`),
    [
      `  ${padEnd(c.meaning.at(-1) ?? '', meaningWidth)}`,
      padStart(c.value, value),
      ...(spread > 0 ? [padEnd(c.spread, spread)] : []),
      padEnd(c.unit, unit),
      c.word,
    ]
      .join(' ')
      .trimEnd(),
  ]);
}

/** Behind ± stands the whole spread or nothing; of a number that lacks something the words tell. */
const spreadCell = (n: ShownNumber): string =>
  n.spread === '' || n.incomplete !== '' ? '' : `± ${plain(n.spread)}`;
const lackCell = (n: ShownNumber): string =>
  plain(lackWithKnown({ lack: n.incomplete, spread: n.spread }));
const wordOf = ({ shown, word }: NumberLine): string => lackCell(shown) || (word ?? '');

/** What stands behind one result: rule of the word, shares of the spread, doubts. */
function outRemarks(out: ReportOut): string[] {
  const shares = sharesOf(out);
  const inLine = shares.map((c) => `${c.label} ${percentText(c.share)}`).join('; ');
  const remarks = [
    ...(out.decision ? [`${out.decision.says}: ${out.decision.rule}`] : []),
    ...(inLine === '' ? [] : [out.leads ? 'spread from:' : `spread from: ${inLine}`]),
    ...out.notes,
    ...out.doubts.map((d) => `doubt: ${d}`),
  ];
  if (remarks.length === 0) return [];
  const bars = out.leads ? shares.flatMap(shareLine) : [];
  return [
    '',
    ...wrap(out.meaning, '  '),
    ...remarks.flatMap((r) => [
      ...wrap(r, '    - ', '      '),
      ...(r === 'spread from:' ? bars : []),
    ]),
  ];
}

type Share = Pick<ReportOut['contributions'][number], 'label' | 'what' | 'share'>;

const sharesOf = ({ contributions, others }: ReportOut): Share[] =>
  contributions.length === 0 || !others
    ? [...contributions]
    : [...contributions, { label: others.words, what: '', share: others.share }];

/** A bar of `width` columns for the whole, in half blocks. */
function blockBar(share: number, width: number): string {
  const halves = Math.max(Math.round(2 * width * share), 1);
  return '█'.repeat(halves >> 1) + (halves % 2 === 1 ? '▌' : '');
}

/** "███████▌             37 %  labour rate (rate, shared)": the whole bar is the whole variance. */
function shareLine({ label, what, share }: Share): string[] {
  const head = `      ${padEnd(blockBar(share, SHARE_BAR), SHARE_BAR)} ${padStart(percentText(share), 5)}  `;
  return wrap(what === '' ? label : `${label} (${what})`, head, ' '.repeat([...head].length));
}

const sampledLines = ({ about, outs }: ReportSampled): string[] => [
  ...wrap(about, '  '),
  ...outs.flatMap((out) => {
    const { meaning, shown, symmetric, shortest, linear, verdict, apart, word, none } = out;
    const said = [
      `${numberText(shown)}${word ? `, ${word}` : ''}`,
      `interval ${symmetric}; shortest ${shortest}`,
      `${verdict}: its interval is ${linear}; ${apart}`,
      none,
    ];
    return [
      ...wrap(meaning, '  - ', '    '),
      ...said.filter((t) => t !== '').flatMap((t) => wrap(t, '      ', '        ')),
      ...influenceLines(out),
    ];
  }),
];

const influenceLines = ({ influences }: ReportSampledOut): string[] =>
  influences.length === 0
    ? []
    : textTable(
        [
          { head: 'by itself', numbers: true },
          { head: 'with others', numbers: true },
          { head: 'share of the variance from', numbers: false },
        ],
        influences.map(({ label, first, total }) => [first, total, label]),
        '      ',
      );

const saidLines = ({ said, saidLeftOut }: ReportAnswer): string[] => [
  ...said.flatMap(({ label, asWritten, by, photos }) => [
    ...bullet(`${label}: ${asWritten}`),
    ...wrap(photos === '' ? by : `${by}; photographs: ${photos}`, '      '),
  ]),
  ...(saidLeftOut > 0 ? [`  and ${saidLeftOut} more readings`] : []),
];

const workingLines = (a: ReportAnswer): string[] => [
  ...textTable(
    [
      { head: '', numbers: false },
      { head: 'value', numbers: true },
      { head: 'spread', numbers: false },
      { head: 'unit', numbers: false },
      { head: 'known', numbers: false },
      { head: 'meaning', numbers: false },
      { head: 'from', numbers: false },
    ],
    a.steps.map(({ symbol, number, meaning, shown, worked }) => [
      symbol,
      number.value,
      lackCell(number) || spreadCell(number),
      number.symbol,
      number.how,
      meaning,
      worked.formula ? formulaText(worked.formula) : shown,
    ]),
  ),
  ...(a.stepsLeftOut > 0 ? [`  and ${a.stepsLeftOut} more lines`] : []),
  ...a.steps.flatMap(({ symbol, worked: { numbers } }) =>
    numbers ? wrap(`${symbol} = ${formulaText(numbers)}`, '  ', '      ') : [],
  ),
];

function findingLines(
  groups: readonly FindingGroup[],
  listed = Number.POSITIVE_INFINITY,
): string[] {
  return groups.flatMap((g) => {
    const at = g.at
      .map((a) => (a.value === '' ? a.place : `${a.place} (${a.value})`))
      .filter((a) => a !== '');
    return [
      ...wrap(`${LEVEL_WORDS[g.level]}: ${g.what}`, '  - ', '    '),
      ...(at.length > 0 ? wrap(`at ${listText(at, listed)}`, '    ') : []),
      ...wrap(g.next, '    '),
    ];
  });
}

const listText = (items: readonly string[], listed: number): string =>
  items.length > listed
    ? `${items.slice(0, listed).join('; ')}; and ${items.length - listed} more`
    : items.join('; ');

const unknownHead = ({ of, what }: UnknownGroup): string => (of === '' ? what : `${of}: ${what}`);

const itemLines = (what: string, items: readonly string[]): string[] =>
  wrap(`${what}: ${listText(items, LISTED)}`, '  - ', '    ');

function claimLines(claim: ReportModel['claims'][number]): string[] {
  const number = claim.shown
    ? [plain(claim.shown.value), spreadCell(claim.shown), claim.shown.symbol]
    : [];
  const detail = [number.filter((t) => t !== '').join(' '), claim.test, claim.rule, claim.why];
  return [
    ...wrap(`“${claim.words}”: ${claim.state}`, '  - ', '    '),
    ...wrap(detail.filter((t) => t !== '').join(' · '), '    '),
  ];
}

/** How each step stands, with overrides by name, and what the order breaks. */
const hoistLines = ({ steps, order }: ReportHoist): string[] => [
  ...steps.flatMap((s) => [
    ...wrap(`${s.label} ${s.name}: ${s.standing}`),
    ...s.gates
      .filter((g) => g.says.startsWith('override'))
      .flatMap((g) => wrap(`${g.title}: ${g.says}`, '    ')),
  ]),
  ...order.flatMap((o) => bullet(o)),
];

/** What to measure next: what is open, then the readings, best first. */
export const nextText = (next: ReportNext): string =>
  next.open.length === 0
    ? 'Nothing is open: every claim has its word, every total is as narrow as asked.\n'
    : lines(['Open'], next.open.flatMap(openLines), ['', 'Measure next'], nextLines(next));

const openLines = ({ words, number, state, asked }: ReportOpen): string[] =>
  bullet([words, number, state, asked === '' ? '' : `asked ${asked}`].filter(Boolean).join(' · '));

const nextLines = ({ lacking, bettering, leftOut }: ReportNext): string[] => [
  ...[...lacking, ...bettering].flatMap(readingLines),
  ...(leftOut > 0 ? [`  and ${leftOut} more`] : []),
];

function readingLines(r: ReportNextReading): string[] {
  const how = [r.why, r.instrument, r.minutes, r.perMinute].filter((t) => t !== '').join(' · ');
  return [
    ...bullet(`${r.label}: ${how}`),
    ...r.effects.flatMap((e) => wrap(e, '      ', '        ')),
  ];
}
