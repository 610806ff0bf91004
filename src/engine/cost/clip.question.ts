import { fastened } from './fastened.ts';
import { processModel } from './process-model.ts';

export default processModel(
  fastened({
    ...{ id: 'clip', title: 'Clips', wording: 'What should the clips of a joint cost, put on?' },
    ...{ piece: 'clip', time: '1.8 / 2.4 / 3.5 s', seat: 'seat of a clip, each' },
    tool: ['clip tool', '0 / 0.3 / 0.8 {u}/h', 'tool, if any'],
    assumptions: ['Put on by hand; a clip that holds a seal needs its line load shown elsewhere.'],
    example: { count: '58', piece: '0.12 ± 0.007 {u}' },
  }),
);
