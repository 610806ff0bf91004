import { processModel, step } from './process-model.ts';
import { machineRate, shared } from './shared-inputs.ts';
import { given, usual } from './usual-inputs.ts';

export default processModel({
  id: 'machining',
  title: 'Machining and routing',
  wording: 'What should milling, drilling, tapping or routing of a part cost?',
  inputs: [
    given({
      ...{ name: 'removed', symbol: 'V', kind: 'volume', unit: 'cm3', range: [0, 20000] },
      ...{ meaning: 'volume cut off a piece', bounds: { atLeast: 0 }, moves: 'up' },
    }),
    given({
      ...{ name: 'edge', symbol: 'l_e', kind: 'length', unit: 'm', range: [0, 100], moves: 'up' },
      ...{ meaning: 'length of edge routed or milled', bounds: { atLeast: 0 } },
    }),
    given({
      ...{ name: 'holes', symbol: 'n_h', kind: 'count', unit: '1', range: [0, 2000], moves: 'up' },
      ...{ meaning: 'holes drilled or tapped', bounds: { atLeast: 0 } },
    }),
    usual(
      {
        ...{ name: 'depth', symbol: 'a_p', kind: 'length', unit: 'mm', range: [0.1, 30] },
        ...{ meaning: 'depth of cut', bounds: { above: 0 } },
      },
      '2 / 3 / 4 mm',
    ),
    usual(
      {
        ...{ name: 'width', symbol: 'a_e', kind: 'length', unit: 'mm', range: [0.1, 400] },
        ...{ meaning: 'width of cut', bounds: { above: 0 } },
      },
      '30 / 40 / 50 mm',
    ),
    usual(
      {
        ...{ name: 'feed', symbol: 'v_f', kind: 'speed', unit: 'm/min', range: [0.02, 40] },
        ...{ meaning: 'feed', bounds: { above: 0 } },
      },
      '1.5 / 2.5 / 4 m/min',
    ),
    usual(
      {
        ...{ name: 'edgeFeed', symbol: 'v_e', kind: 'speed', unit: 'm/min', range: [0.1, 40] },
        ...{ meaning: 'feed along an edge', bounds: { above: 0 }, moves: 'down' },
      },
      '2 / 3 / 5 m/min',
    ),
    usual(
      {
        ...{ name: 'hole', symbol: 't_h', kind: 'time', unit: 's', range: [0.3, 60], moves: 'up' },
        meaning: 'time for a hole, moving to it included',
      },
      '2.5 / 3 / 4 s',
    ),
    usual(
      {
        ...{ name: 'cutting', symbol: 'k_c', kind: 'stress', unit: 'MPa', range: [50, 6000] },
        ...{ meaning: 'specific cutting force', moves: 'up' },
      },
      '600 / 800 / 1000 MPa',
    ),
    usual(
      {
        ...{ name: 'efficiency', symbol: 'η', kind: 'ratio', unit: '%', range: [40, 100] },
        ...{ meaning: 'efficiency of the spindle', bounds: { above: 0 }, moves: 'down' },
      },
      '75 / 80 / 85 %',
    ),
    usual(
      {
        ...{ name: 'power', symbol: 'P₀', kind: 'power', unit: 'kW', range: [0.5, 100] },
        ...{
          meaning: 'power at which the rate of the machine holds',
          bounds: { above: 0 },
          moves: 'down',
        },
      },
      'exactly 15 kW',
    ),
    usual(
      {
        ...{
          name: 'handling',
          symbol: 't_d',
          kind: 'time',
          unit: 's',
          range: [0, 900],
          moves: 'up',
        },
        meaning: 'time to clamp, change tools and unclamp',
      },
      '15 / 25 / 40 s',
    ),
    machineRate('router', '75 / 95 / 120 {u}/h', 'machine, with whom it needs'),
    shared('rejects', '0.2 / 0.5 / 1 %'),
    shared('setUp', '10 / 20 / 40 min'),
    shared('batch', 'exactly 500'),
  ],
  steps: [
    step('removal', 'Q', 'volumeRate', 'cm3/min', 'rate of removal', 'Q = a_p a_e v_f'),
    step('spindle', 'P', 'power', 'kW', 'power of the spindle', 'P = Q k_c / η'),
    step(
      ...(['cutTime', 'z', 'time', 's', 'time of a cycle'] as const),
      'z = V / Q + l_e / v_e + n_h t_h + t_d',
    ),
  ],
  plan: (x) => {
    const removal = (x.depth ?? 0) * (x.width ?? 0) * (x.feed ?? 0);
    const spindle = (removal * (x.cutting ?? 0)) / (x.efficiency ?? 0);
    const cutTime =
      (x.removed ?? 0) / removal +
      (x.edge ?? 0) / (x.edgeFeed ?? 0) +
      (x.holes ?? 0) * (x.hole ?? 0) +
      (x.handling ?? 0);
    return {
      work: { cycle: cutTime, size: spindle / (x.power ?? 0) },
      steps: { removal, spindle, cutTime },
    };
  },
  sources: [
    {
      title: 'Power of cutting: rate of removal times specific cutting force over efficiency',
      status: 'published',
    },
    { title: 'Feeds, times and rates', status: 'common practice, no source' },
  ],
  assumptions: [
    'The material is priced with the part that is machined; chips are not sold here.',
    'Depth, width and feed shorten the cut and ask for power: which way the cost goes hangs on both, so no direction is declared.',
  ],
  checks: [
    {
      what: 'power 4.65 kW at 3 × 0.2 × 120 m/min and 3100 MPa; 1527.9 mm³/s of a face mill; 1924 mm³/min of a turned bar',
      source: 'published examples (handbook of cutting, GATE PI), recomputed',
      status: 'seen',
      test: 'test/published/cutting-power.test.ts',
    },
  ],
  example: {
    removed: '45 ± 3 cm3',
    edge: '1.2 ± 0.02 m',
    holes: '12',
  },
});
