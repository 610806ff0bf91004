import { expose } from 'comlink';
import { Desk } from './desk.ts';
import { carryRefusals } from './refusal-transfer.ts';

carryRefusals();
expose(new Desk());
