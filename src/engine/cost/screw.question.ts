import { fastened } from './fastened.ts';
import { processModel } from './process-model.ts';

export default processModel(
  fastened({
    ...{ id: 'screw', title: 'Screws', wording: 'What should the screws of a joint cost, driven?' },
    ...{ piece: 'screw', time: '3.5 / 4.6 / 6 s', seat: 'hole or thread of a screw, each' },
    tool: ['screwdriver', '1 / 1.5 / 2.5 {u}/h', 'driving tool'],
    assumptions: ['By hand, one after the other; the nut side is a question of its own.'],
    example: { count: '62', piece: '0.05 ± 0.003 {u}' },
  }),
);
