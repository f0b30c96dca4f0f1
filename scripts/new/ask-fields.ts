import type { PlainMap } from '../../src/entries/begin/begin-file.ts';
import { isGiven, type Question } from '../../src/entries/begin/beginning.ts';
import { fieldNamed, type NamedField } from '../../src/entries/begin/field-named.ts';
import { limitsOnGroup } from '../../src/entries/begin/limits-on-group.ts';
import { acceptedText } from '../../src/entries/describe/accepted-text.ts';
import { describeShape } from '../../src/entries/describe/describe-shape.ts';
import type { Shape } from '../../src/entries/describe/field.ts';
import type { Challenge } from '../../src/model/challenge.ts';
import type { Asker } from './asking.ts';
import { answered, type Making } from './making.ts';

/**
 * Asks for what is not given yet, one field after another, then for each group whether there is more to say. Answers are read
 * as the file will be read. A group that the challenge's limits rest on is proposed, and says so. Throws Left where the one who is asked leaves.
 */
export async function askFields(
  making: Making,
  given: PlainMap,
  asker: Asker,
  challenge: Challenge | null = null,
): Promise<PlainMap> {
  const { questions, groups } = making.beginning;
  let fields = await askEach(making, given, questions, asker);
  for (const group of groups) {
    const { title, questions: more } = group;
    if (more.every((question) => !isOpen(making, fields, question))) continue;
    const limits = challenge === null ? [] : limitsOnGroup(making.beginning, group, fields, challenge);
    const because =
      limits.length === 0 ? '' : ` Without it nobody can check what the rules ask (${limits.join('; ')}).`;
    if (await asker.agree(`Do you want to say something of ${title}?${because}`, limits.length > 0))
      fields = await askEach(making, fields, more, asker);
  }
  return fields;
}

async function askEach(
  making: Making,
  given: PlainMap,
  questions: readonly Question[],
  asker: Asker,
): Promise<PlainMap> {
  let fields = given;
  for (const question of questions) {
    if (!isOpen(making, fields, question)) continue;
    const found = fieldNamed(describeShape(making.beginning.schema), question.field);
    if (!found.ok) throw new Error(found.message);
    const before = fields;
    const answer = await asker.ask({
      title: titleOf(found.named),
      help: helpOf(found.named, question.hint),
      words: wordsOf(found.named.shape),
      isOptional: question.optional === true,
      check: (typed) => answered(making, before, question.field, typed).wrong,
    });
    if (answer !== null) fields = answered(making, before, question.field, answer).fields;
  }
  return fields;
}

function isOpen({ beginning }: Making, fields: PlainMap, { field, unless, when }: Question): boolean {
  const shape = describeShape(beginning.schema);
  if (when !== undefined && !isGiven(shape, fields, when)) return false;
  return ![field, ...(unless ?? [])].some((name) => isGiven(shape, fields, name));
}

function titleOf({ titles }: NamedField): string {
  return titles
    .map((title, at) => (at === 0 ? title : title.charAt(0).toLowerCase() + title.slice(1)))
    .join(': ');
}

function helpOf({ field, shape }: NamedField, hint: string | undefined): string {
  const said = field === null ? [] : [`${field.description}.`];
  return [...said, ...(hint === undefined ? [] : [hint]), ...howToWrite(shape, field?.example ?? '')].join(
    ' ',
  );
}

/** How it is written: nothing where one chooses from words, else what is accepted, or an example where that tells more. */
function howToWrite(shape: Shape, example: string): string[] {
  if (wordsOf(shape) !== null) return [];
  if (shape.kind === 'quantity')
    return [`Write ${acceptedText(shape).replace(/, such as .*$/, '')}, such as ${example}`];
  return [`Such as ${example}`];
}

/** The words to choose one of; null where anything may be typed. */
function wordsOf(shape: Shape): readonly string[] | null {
  if (shape.kind === 'yes-no') return ['yes', 'no'];
  return shape.kind === 'word' ? shape.words : null;
}
