import { runBoard } from './run-board.ts';

const controls = document.querySelector<HTMLFieldSetElement>('.board-view');
const table = document.querySelector<HTMLTableElement>('.standings.whole');
if (controls !== null && table !== null) runBoard(controls, table);
