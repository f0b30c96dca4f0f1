import { describe, expect, it } from 'vitest';
import type { FrozenResult } from '../../src/contest/frozen/frozen.ts';
import type { JudgedFlight } from '../../src/contest/standing.ts';
import { challengeCsv, csvCell } from '../../src/publish/csv.ts';
import { challengeRecord, entry, entryRecord } from './sample-almanac.ts';

describe('a cell', () => {
  // What a spreadsheet takes for a formula: OWASP, "CSV Injection" (cells that begin with = + - @, their full-width forms,
  // tab or return).
  it.each(['=1+1', '+1', '-1', '@cmd', '\tx', '\r=1', '\n=1', '  =1', '＝1+1', '＠cmd'])(
    '%j gets an apostrophe in front',
    (text) => {
      const shown = csvCell(text).replace(/^"(.*)"$/s, '$1');
      expect(shown).toBe(`'${text}`);
    },
  );

  // RFC 4180, section 2, rules 5 to 7: fields with commas, quotes or line breaks are quoted, quotes doubled.
  it('is quoted where it holds a comma, a quote or a line break', () => {
    expect(csvCell('a,b')).toBe('"a,b"');
    expect(csvCell('the "Long" one')).toBe('"the ""Long"" one"');
    expect(csvCell('two\nlines')).toBe('"two\nlines"');
    expect(csvCell('plain')).toBe('plain');
  });

  it('of a number is the number, of nothing is empty', () => {
    expect(csvCell(-2.5)).toBe('-2.5');
    expect(csvCell(null)).toBe('');
  });
});

describe('the table of a challenge', () => {
  it('has one row a flight, lines that end with CRLF, and the challenge it comes from', () => {
    expect(challengeCsv(challengeRecord)).toBe(
      'challenge,entry,name,builders,place,flight,date,official time [s],standard uncertainty [s],status,reason,' +
        'score [s],counted,setup\r\n' +
        'long-haul,reedling,Reedling,amarsh,1,1,2027-05-09,41.7,0.11,accepted,,41.7,yes,\r\n',
    );
  });

  it('keeps the flights of entries that only the final result still knows', () => {
    const kept = { setup: null, scoreU: 0, stale: [], reachedTarget: false };
    const timed = (seconds: number) => ({ seconds, u: 0, ruled: false, explanation: '' });
    const flights: JudgedFlight[] = [
      {
        ...kept,
        number: 2,
        date: '2027-05-10',
        official: timed(30.5),
        status: 'accepted',
        reason: null,
        score: 30.5,
        counted: true,
      },
      {
        ...kept,
        number: 3,
        date: '2027-05-11',
        official: timed(12),
        status: 'refused',
        reason: 'no landing',
        score: null,
        counted: false,
      },
    ];
    const gone = { id: 'gone', name: 'Gone, now', builders: ['otter'], flights: [], facts: {} };
    const frozen = { entries: [gone] } as unknown as FrozenResult;
    const { result } = challengeRecord;
    const entries = new Map([
      ...result.entries,
      ['gone', { ...[...result.entries.values()][0]!, entry: 'gone', flights }] as const,
    ]);
    const table = challengeCsv({ ...challengeRecord, frozen, result: { ...result, entries } });
    expect(table.split('\r\n').slice(2, -1)).toEqual([
      'long-haul,gone,"Gone, now",otter,,2,2027-05-10,30.5,,accepted,,30.5,yes,',
      'long-haul,gone,"Gone, now",otter,,3,2027-05-11,12,,refused,no landing,,no,',
    ]);
  });

  it('gives a builder no way to write a formula by a name', () => {
    const record = { ...entryRecord, entry: { ...entry, name: '=HYPERLINK("https://evil.example","x")' } };
    expect(challengeCsv({ ...challengeRecord, entries: [record] })).toContain(
      ',"\'=HYPERLINK(""https://evil.example"",""x"")",',
    );
  });
});
