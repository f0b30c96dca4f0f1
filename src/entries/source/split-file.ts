import matter from 'gray-matter';
import type { Split } from './split-plain.ts';

function refused(): never {
  throw new Error('Front matter is YAML and nothing else.');
}

const refusingEngine = { parse: refused, stringify: refused };

/** Takes the text between the lines as it is: it is read, once, by `read-source.ts`. */
const noEngine = { parse: () => ({}), stringify: refused };

/**
 * Separates front matter and body with gray-matter. Options are always passed, which turns its cache off; its engines,
 * one of which evaluates code, are replaced. The frame has been checked before (`frame.ts`), so that no file names a
 * language.
 */
export const splitFile: Split = (text) => {
  const file = matter(text, {
    language: 'yaml',
    engines: {
      yaml: noEngine,
      json: refusingEngine,
      javascript: refusingEngine,
      js: refusingEngine,
      coffee: refusingEngine,
      toml: refusingEngine,
    },
  });
  const frontMatterStart = text.indexOf('\n') + 1;
  return {
    frontMatter: file.matter.replace(/^\r?\n/, '').replace(/\r$/, ''),
    frontMatterStart,
    body: file.content,
    bodyStart: text.length - file.content.length,
  };
};
