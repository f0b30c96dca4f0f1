import { describe, expect, it } from 'vitest';
import { paperStyle } from '../../src/components/paper-style.ts';

// CSS Syntax Module Level 3, 4.3.7: a backslash with a number in hexadecimal and a space stands for that sign.
describe('the head of a sheet of paper', () => {
  it('names the site and the date', () => {
    expect(paperStyle('Nić & Faden', '9 May 2027')).toContain(
      '@top-left{content:"Nić & Faden"}@top-right{content:"9 May 2027"}',
    );
  });

  it('keeps a title that would end the string or the rule inside it', () => {
    expect(paperStyle('a"}body{display:none}\\\n', '')).toContain(
      'content:"a\\22 }body{display:none}\\5c \\a "}',
    );
  });
});
