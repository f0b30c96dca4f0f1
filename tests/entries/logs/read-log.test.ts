import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readStretchLog, readThrustLog, readTorqueLog } from '../../../src/entries/logs/read-log.ts';

const messages = (log: { readonly problems: readonly { readonly message: string }[] }) =>
  log.problems.map(({ message }) => message);

describe('a stretch test', () => {
  it('gives ratio and force, out and back, from an extension', () => {
    const log = readStretchLog('a.csv', 'extension [mm],force [N]\n0,0\n100,1.5\n50,0.4\n', 0.1);
    expect(log.points).toEqual([
      { ratio: 1, force: 0 },
      { ratio: 2, force: 1.5 },
      { ratio: 1.5, force: 0.4 },
    ]);
    expect(log.problems).toEqual([]);
  });

  it('takes ratios as they are, and a calibration from the header', () => {
    const log = readStretchLog('a.csv', 'ratio;force [N] ± 2 %\r\n1;0\r\n6,5;5,25\r\n', 0.1);
    expect(log.points?.[1]).toEqual({ ratio: 6.5, force: 5.25 });
    expect(log.calibration).toBe(0.02);
  });

  it('has a calibration of 3 % where the header states none (figures of format 1)', () => {
    expect(readStretchLog('a.csv', 'ratio,force [N]\n1,0\n2,1\n', 0.1).calibration).toBe(0.03);
  });

  it('takes gram-force for grams in a force column (1 gf = 9.80665 mN, 3rd CGPM 1901)', () => {
    const log = readStretchLog('a.csv', 'ratio\tforce [g]\n1\t0\n2\t100\n', 0.1);
    expect(log.points?.[1]?.force).toBeCloseTo(0.980665, 12);
  });
});

describe('a torque and a thrust log', () => {
  it('are read with a byte order mark, quotes, columns in any order and further ones', () => {
    const torque = readTorqueLog(
      'a.csv',
      '\ufeff"note","torque [N·mm]","turns"\n"a, b","90","600"\n,"0","0"\n',
    );
    expect(torque.points).toEqual([
      { turns: 600, torque: 0.09 },
      { turns: 0, torque: 0 },
    ]);
    expect(readThrustLog('a.csv', 'time [s];thrust [N]\n0;1\n\n0,5;2\n').points?.[1]).toEqual({
      time: 0.5,
      thrust: 2,
    });
  });

  it('may have columns of the builder’s own, and empty rows that a table leaves behind', () => {
    const text = 'time [s];thrust raw;thrust [g] ± 2,5 %;;\n0;17;0;;\n1;19;1,5;;\n;;;;\n\n';
    const log = readThrustLog('a.csv', text);
    expect(log.problems).toEqual([]);
    expect(log.points?.map(({ time }) => time)).toEqual([0, 1]);
    expect(log.calibration).toBe(0.025);
  });

  it('go one way', () => {
    expect(messages(readTorqueLog('a.csv', 'turns,torque [N·mm]\n10,5\n20,9\n'))).toEqual([
      'Row 3, column "turns": the turns go up here; they are those still in, and a log is taken while unwinding, from wound to slack, so turn the rows round or leave this one out.',
    ]);
    expect(messages(readThrustLog('a.csv', 'time [s],thrust [N]\n1,5\n0.5,9\n'))).toEqual([
      'Row 3, column "time": the time goes back here; sort the rows or leave this one out.',
    ]);
  });
});

describe('a log that cannot be used', () => {
  it('says row and column', () => {
    const log = readThrustLog('bench.csv', 'time [s],thrust [N]\n0,1\n1,x\n2,\n');
    expect(log.points).toBeNull();
    expect(log.problems).toMatchObject([
      { code: 'log-value', file: 'bench.csv', line: 3, column: 1, endColumn: 4, found: 'x' },
      { code: 'log-value', line: 4 },
    ]);
    expect(messages(log)).toEqual([
      'Row 3, column "thrust": "x" is not a number.',
      'Row 4, column "thrust": nothing is written here; put a number, or leave the row out.',
    ]);
  });

  it('guesses no decimal mark', () => {
    expect(messages(readThrustLog('a.csv', 'time [s];thrust [N]\n0;1,5\n1;2.5\n'))).toEqual([
      'Row 3, column "thrust": "2.5" is written with another decimal mark than the rows before it; use a point, or a comma, throughout.',
    ]);
  });

  it('never takes the comma of a decimal for the end of a column', () => {
    // Read as columns, 0,5,1,2 would be 5 N at the start.
    expect(messages(readThrustLog('a.csv', 'time [s],thrust [N]\n0,5,1,2\n'))).toEqual([
      'Row 2, column "time" and "thrust": 4 values stand here, but the header names 2 columns; where decimals are written with a comma, put semicolons between the columns.',
    ]);
    expect(messages(readThrustLog('a.csv', 'time [s];thrust [N]\n0;5\n1;4;3\n'))[0]).toBe(
      'Row 3, column "time" and "thrust": 3 values stand here, but the header names 2 columns; take the others out.',
    );
  });

  it.each(['NaN', 'Infinity', '0x10', '1e999', '1_000', '--1', ''])('takes no %j for a number', (cell) => {
    expect(readThrustLog('a.csv', `time [s];thrust [N]\n0;1\n1;${cell}\n`).problems[0]?.code).toBe(
      'log-value',
    );
  });

  it('with headings of another kind is told once, with the header to write', () => {
    expect(messages(readThrustLog('a.csv', 'Zeit [s];Schub [g]\n0;1\n1;2\n'))).toEqual([
      'The first row of the log must name its columns and units, and `time [s]` and `thrust [g]` are missing; it is "Zeit [s];Schub [g]". Write it like `time [s];thrust [g]`, with the names in the order of the columns and the units you measured in.',
    ]);
    expect(messages(readThrustLog('a.csv', 't (s);F (N)\n0;1\n1;2\n'))).toHaveLength(1);
  });

  it('needs its columns and their units', () => {
    expect(messages(readThrustLog('a.csv', '0,1\n1,2\n'))[0]).toBe(
      'The first row of the log must name its columns and units, and `time [s]` and `thrust [g]` are missing; it is "0,1". Write it like `time [s],thrust [g]`, with the names in the order of the columns and the units you measured in.',
    );
    expect(messages(readThrustLog('a.csv', 'time,thrust [Hz]\n0,1\n'))).toEqual([
      'The column "time" has no unit: write it like `time [s]`.',
      'The column "thrust" has the unit "Hz", which is not one of force: write it like `thrust [g]`.',
    ]);
    expect(messages(readStretchLog('a.csv', 'ratio,extension [mm],force [N]\n', 0.1))).toEqual([
      'The log has both `ratio` and `extension`: keep one of the two columns.',
    ]);
  });

  it('is too short or too long', () => {
    expect(readThrustLog('a.csv', '').problems[0]?.code).toBe('log-header');
    expect(readThrustLog('a.csv', 'time [s],thrust [N]\n0,1\n').problems[0]?.code).toBe('log-empty');
    const rows = (count: number) => `time [s],thrust [N]\n${'1,1\n'.repeat(count)}`;
    expect(readThrustLog('a.csv', rows(200_000)).points).toHaveLength(200_000);
    expect(readThrustLog('a.csv', rows(200_001)).problems[0]?.code).toBe('log-too-long');
  });

  it('never throws, whatever stands in it, and never gives a number that is none', () => {
    const piece = fc.constantFrom(
      'time [s]',
      'thrust [g]',
      ',',
      ';',
      '\t',
      '\n',
      '\r\n',
      '1',
      '-2,5',
      '1e9',
      '"',
      '± 2 %',
      'NaN',
      '\u0000',
      'turns',
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 30 }), (pieces) => {
        const log = readThrustLog('a.csv', `time [s];thrust [g]\n${pieces.join('')}`);
        for (const { time, thrust } of log.points ?? [])
          expect(Number.isFinite(time) && Number.isFinite(thrust)).toBe(true);
        expect(log.points === null).toBe(log.problems.length > 0);
      }),
      { seed: 4, numRuns: 500 },
    );
  });
});
