import { describeShape } from '../../entries/describe/describe-shape.ts';
import type { Content, Understood } from '../../entries/folder/content.ts';
import { fileKinds } from '../../entries/schema/file-kinds.ts';
import type { SourceDocument } from '../../entries/source/source.ts';
import type { ChangedFile } from './changed-files.ts';
import { changedValues } from './changed-values.ts';
import { withoutNames } from './names-of-juniors.ts';
import type { ReviewedFile } from './review.ts';
import type { Sides } from './side.ts';

/** The changed files that belong to no aircraft's folder, with the values that changed in those that can be read. */
export function reviewedFiles(sides: Sides, files: readonly ChangedFile[]): readonly ReviewedFile[] {
  const [was, is] = [sourcesOf(sides.before.content), sourcesOf(sides.after.content)];
  const juniors = new Set(
    [sides.before, sides.after].flatMap(({ content }) =>
      content.builders.filter(({ value }) => value.junior).map(({ source }) => source.file),
    ),
  );
  return files
    .filter(({ place }) => place.kind !== 'entry' && place.kind !== 'entry-asset')
    .map(({ file, change, place: { kind } }) => {
      const [before, after] = [was.get(file) ?? null, is.get(file) ?? null];
      // A frozen result is written by a command and read by nobody field by field.
      const told =
        kind !== 'result' && (change === 'changed' ? before !== null && after !== null : after !== null);
      const values = told ? changedValues(before, after, shapeOf(kind)) : [];
      return {
        file,
        change,
        kind,
        values: juniors.has(file) ? withoutNames(values, 'builder') : values,
        text: before !== null && after !== null && before.body !== after.body,
      };
    });
}

function shapeOf(kind: string) {
  const schema = fileKinds.find((one) => one.kind === (kind === 'batch' ? 'rubber' : kind))?.schema;
  return schema === undefined ? null : describeShape(schema);
}

function sourcesOf(content: Content): ReadonlyMap<string, SourceDocument> {
  const { site, pages, builders, challenges, rulings, results, batches, news } = content;
  const all: readonly Understood<unknown>[] = [
    ...(site === null ? [] : [site]),
    ...[pages, builders, challenges, rulings, results, batches, news].flat(),
  ];
  return new Map(all.map(({ source }) => [source.file, source]));
}
