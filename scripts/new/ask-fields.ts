import type { PlainMap } from '../../src/entries/begin/begin-file.ts';
import { isGiven, type Question } from '../../src/entries/begin/beginning.ts';
import { fieldNamed, type NamedField } from '../../src/entries/begin/field-named.ts';
import { acceptedText } from '../../src/entries/describe/accepted-text.ts';
import { describeShape } from '../../src/entries/describe/describe-shape.ts';
import type { Shape } from '../../src/entries/describe/field.ts';
import type { Asker } from './asking.ts';
import { answered, type Making } from './making.ts';

/**
 * Asks for what is not given yet, one field after another, then for each group whether there is more to say. Answers are read
 * as the file will be read. Throws Left where the one who is asked leaves.
 */
export async function askFields(making: Making, given: PlainMap, asker: Asker): Promise<PlainMap> {
  const { questions, groups } = making.beginning;
  let fields = await askEach(making, given, questions, asker);
  for (const { title, questions: more } of groups) {
    if (more.every((question) => !isOpen(making, fields, question))) continue;
    if (await asker.agree(`Do you want to say something of ${title}?`))
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
      words: found.named.shape.kind === 'word' ? found.named.shape.words : null,
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
  const accepted = acceptedIn(shape);
  return [
    ...(field === null ? [] : [`${field.description}.`]),
    ...(hint === undefined ? [] : [hint]),
    ...(field === null ? [] : [`Such as ${field.example}${accepted === null ? '' : ` (${accepted})`}`]),
  ].join(' ');
}

/** What may be written, where it is one text or a list of such; null where the example says more than words would. */
function acceptedIn(shape: Shape): string | null {
  if (shape.kind === 'list') return acceptedIn(shape.of);
  if (['map', 'either', 'text', 'number', 'date'].includes(shape.kind)) return null;
  return shape.kind === 'map' || shape.kind === 'either' ? null : acceptedText(shape);
}
