import { runCompare } from './run-compare.ts';

const chooser = document.querySelector<HTMLElement>('.chooser');
const yours = document.querySelector<HTMLElement>('.yours');
if (chooser !== null && yours !== null) runCompare(chooser, yours);
