import { fastened } from './fastened.ts';
import { processModel } from './process-model.ts';

export default processModel(
  fastened({
    ...{
      id: 'rivet-nut',
      title: 'Rivet nuts',
      wording: 'What should the rivet nuts of a joint cost, set?',
    },
    ...{ piece: 'rivet nut', time: '2.5 / 3.2 / 4.5 s', seat: 'punched hole of a rivet nut, each' },
    tool: ['rivet nut setter', '1.5 / 2.5 / 4 {u}/h', 'setting tool'],
    assumptions: ['Set by hand into punched holes, one after the other.'],
    example: { count: '62', piece: '0.09 ± 0.005 {u}' },
  }),
);
