import { type Finder, question, type ScalarColumn } from '../method.ts';
import { CENSUS } from '../sections.ts';
import { graphOf } from './removal/from-study.ts';
import { allCircles } from './removal/plan.ts';
import { factsOf } from './removal-facts.ts';
import { circleFinding } from './removal-notes.ts';

/** What is reached in service; rings anywhere in the record are noted on the way. */
function serviced(at: Finder): readonly string[] {
  const graph = graphOf(at.view);
  for (const circle of allCircles(graph, factsOf(at))) at.note(circleFinding(graph, circle));
  const nodes = [...at.view.nodes('assembly', at.subject), ...at.view.nodes('part', at.subject)];
  return nodes
    .map(({ id }) => id)
    .filter(
      (id) => at.view.properties(id).includes('service') && at.text(id, 'service').text !== '',
    );
}

const asked = (
  of: Pick<ScalarColumn, 'name' | 'symbol' | 'kind' | 'unit' | 'meaning'>,
  output: string,
): ScalarColumn => ({
  in: 'scalar',
  ...of,
  range: [0, 100_000],
  bounds: { atLeast: 0 },
  where: `way to the part, ${output}`,
  find: (at, row) => at.ask('removal-path', row, output),
});

export default question({
  id: 'access-times',
  version: 1,
  title: 'Times to reach what is serviced',
  wording: 'How long does it take, and what does it cost, to reach each part that is serviced?',
  subject: 'vehicle',
  section: CENSUS,
  uses: ['removal-path'],
  inputs: [
    {
      in: 'table',
      name: 'parts',
      meaning: 'a part or assembly that is reached in service',
      where: 'parts and assemblies that say why they are reached in service',
      rows: serviced,
      columns: [
        asked(
          { name: 'time', symbol: 't', kind: 'time', unit: 'min', meaning: 'time to take it off' },
          'time',
        ),
        asked(
          {
            name: 'cost',
            symbol: 'c',
            kind: 'money',
            unit: '{u}',
            meaning: 'cost of taking it off',
          },
          'cost',
        ),
        {
          in: 'term',
          name: 'part',
          meaning: 'the part, and why it is reached',
          where: 'name and service of the part',
          find: (at, row) => {
            const node = at.view.node(row);
            return at.word(
              [`${node?.label} ${node?.name}`, at.text(row, 'service').text]
                .filter(Boolean)
                .join(': '),
            );
          },
        },
      ],
    },
  ],
  body: {
    body: 'tally',
    table: 'parts',
    groupBy: 'part',
    terms: [
      { name: 'time', symbol: 'Σt', kind: 'time', shown: 'Σ t', needs: ['time'], each: (t) => t },
      { name: 'cost', symbol: 'Σc', kind: 'money', shown: 'Σ c', needs: ['cost'], each: (c) => c },
      { name: 'parts', symbol: 'N', kind: 'count', shown: 'Σ 1', needs: ['time'], each: () => 1 },
    ],
    outputs: [
      {
        name: 'mean',
        symbol: 't̄',
        kind: 'time',
        unit: 'min',
        meaning: 'mean time to reach one',
        shown: 'Σ t / N',
        of: (time, _cost, parts) => time / parts,
      },
      {
        name: 'time',
        symbol: 'Σt',
        kind: 'time',
        unit: 'min',
        meaning: 'times of all together',
        shown: 'Σ t',
        of: (time) => time,
      },
      {
        name: 'cost',
        symbol: 'Σc',
        kind: 'money',
        unit: '{u}',
        meaning: 'costs of all together',
        shown: 'Σ c',
        of: (_time, cost) => cost,
      },
    ],
  },
  modelError: {},
  sources: [{ title: 'Sum over the ways to each', status: 'common practice, no source' }],
  assumptions: [
    'Each is reached from the whole vehicle; nothing that one way has opened helps the next.',
  ],
  cautions: ['hoist-balance', 'high-voltage', 'lifting-by-hand'],
  checks: [
    {
      what: 'mean and sum of the ways to each part, against the ways asked one by one',
      source: 'own inputs, sums worked by hand',
      status: 'own inputs, published formula',
      test: 'test/engine/joining/removal-questions.test.ts',
    },
  ],
  example: {
    parts: [
      { time: '3.1 ± 0.4 min', cost: '13 ± 2 {u}', part: '40 traction battery: repair' },
      { time: '0.8 ± 0.1 min', cost: '0.5 ± 0.1 {u}', part: '20-015 washer reservoir: pump' },
    ],
  },
});
