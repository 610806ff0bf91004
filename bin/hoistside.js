#!/usr/bin/env node
import './require-node.js';

const { register } = await import('tsx/esm/api');
register();
const { main } = await import('../src/cli/main.ts');
process.exitCode = await main(process.argv.slice(2));
