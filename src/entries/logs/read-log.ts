import type { StretchPoint, TorquePoint } from '../../model/batch.ts';
import type { ThrustPoint } from '../../model/bench-log.ts';
import type { Problem } from '../problems/problem.ts';
import type { Column } from './log-header.ts';
import { type LogRow, type RowRule, readLogRows } from './log-rows.ts';

export interface ReadLog<Point> {
  /** Null where the log cannot be used; the problems say why. */
  readonly points: readonly Point[] | null;
  /** Relative standard uncertainty of force or torque, one factor for the whole log. */
  readonly calibration: number;
  readonly problems: readonly Problem[];
}

/** What a rig is good for where its log does not say: common practice, no source. */
export const usualCalibration = 0.03;

const extension: Column = { name: 'extension', kind: 'length', unitless: false, example: 'extension [mm]' };
const ratio: Column = { name: 'ratio', kind: 'number', unitless: true, example: 'ratio' };
const force: Column = { name: 'force', kind: 'force', unitless: false, example: 'force [N]' };
const turns: Column = { name: 'turns', kind: 'turns', unitless: true, example: 'turns' };
const torque: Column = { name: 'torque', kind: 'torque', unitless: false, example: 'torque [N·mm]' };
const time: Column = { name: 'time', kind: 'time', unitless: false, example: 'time [s]' };
const thrust: Column = { name: 'thrust', kind: 'force', unitless: false, example: 'thrust [g]' };

/**
 * Reads a stretch test: `extension` or `ratio` and `force`, out and back in the order measured. The unstretched length
 * between the marks (metre) turns an extension into a ratio. A decimal comma, a semicolon or a tab, a byte order mark and
 * CRLF are accepted; never throws.
 */
export function readStretchLog(file: string, text: string, length: number): ReadLog<StretchPoint> {
  const toRatio = (row: LogRow) =>
    row.extension === undefined ? (row.ratio ?? 0) : 1 + row.extension / length;
  return read(file, text, [[ratio, extension], [force]], force, [stretched(length)], (row) => ({
    ratio: toRatio(row),
    force: row.force ?? 0,
  }));
}

/** Reads a torque test or torque log: `turns` still in and `torque`, unwinding from wound to slack. Never throws. */
export function readTorqueLog(file: string, text: string): ReadLog<TorquePoint> {
  return read(file, text, [[turns], [torque]], torque, [unwinding], (row) => ({
    turns: row.turns ?? 0,
    torque: row.torque ?? 0,
  }));
}

/** Reads a thrust log: `time` and `thrust` of one motor. Never throws. */
export function readThrustLog(file: string, text: string): ReadLog<ThrustPoint> {
  return read(file, text, [[time], [thrust]], thrust, [onwards], (row) => ({
    time: row.time ?? 0,
    thrust: row.thrust ?? 0,
  }));
}

function read<Point>(
  file: string,
  text: string,
  columns: readonly (readonly Column[])[],
  calibrated: Column,
  rules: readonly RowRule[],
  point: (row: LogRow) => Point,
): ReadLog<Point> {
  const { rows, calibrations, problems } = readLogRows(file, text, columns, rules);
  const calibration = calibrations.get(calibrated.name) ?? usualCalibration;
  return { points: rows === null ? null : rows.map(point), calibration, problems };
}

function stretched(length: number): RowRule {
  return (row) => {
    if (row.ratio !== undefined && row.ratio <= 0)
      return {
        code: 'log-value',
        column: 'ratio',
        message: 'a ratio is the stretched length over the unstretched one and is above zero',
      };
    if (row.extension !== undefined && row.extension <= -length)
      return { code: 'log-value', column: 'extension', message: 'a strand cannot be shorter than nothing' };
    return null;
  };
}

const unwinding: RowRule = (row, before) => {
  if ((row.turns ?? 0) < 0)
    return { code: 'log-value', column: 'turns', message: 'there are zero turns or more still in' };
  if (before === null || (row.turns ?? 0) <= (before.turns ?? 0)) return null;
  return {
    code: 'log-order',
    column: 'turns',
    message:
      'the turns go up here; they are those still in, and a log is taken while unwinding, from wound to slack, so turn the rows round or leave this one out',
  };
};

const onwards: RowRule = (row, before) => {
  if (before === null || (row.time ?? 0) >= (before.time ?? 0)) return null;
  return {
    code: 'log-order',
    column: 'time',
    message: 'the time goes back here; sort the rows or leave this one out',
  };
};
