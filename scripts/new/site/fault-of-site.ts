import { site } from '../../../src/entries/schema/site.ts';
import { readSource } from '../../../src/entries/source/read-source.ts';
import { splitPlain } from '../../../src/entries/source/split-plain.ts';
import { understandSite } from '../../../src/entries/understand/site.ts';
import { fieldLines } from '../../../src/entries/write/yaml-text.ts';
import { printable } from '../../terminal/printable.ts';

/** Why a field of `site.md` cannot say this, in a sentence; null where it can, and where there is no such field. */
export function faultOfSite(key: string, text: string): string | null {
  if (!(key in site.shape)) return null;
  const value = key === 'repository' ? { kind: 'forgejo', url: text } : text;
  const needed = key === 'title' ? {} : { title: 'Any' };
  const fields = Object.entries({ format: '1', ...needed, [key]: value });
  const lines = fields.flatMap(([name, each]) => fieldLines(name, each));
  const { source, problems } = readSource('site.md', `---\n${lines.join('\n')}\n---\n`, splitPlain);
  const found = source === null ? problems : [...problems, ...understandSite(source).problems];
  const fault = found.find(({ severity }) => severity === 'error');
  return fault === undefined ? null : printable(fault.message);
}
