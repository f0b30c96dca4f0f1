import { describeShape } from '../../entries/describe/describe-shape.ts';
import type { Shape } from '../../entries/describe/field.ts';
import { fileKinds } from '../../entries/schema/file-kinds.ts';
import { acceptedForms, nounOf } from '../../quantities/accepted.ts';
import type { Kind } from '../../quantities/quantity.ts';

/** Each kind of measurement that some file has a field for, with what may be written, in the order of the files. */
export function measurementsWritten(): { readonly name: string; readonly accepted: string }[] {
  const kinds = new Set(fileKinds.flatMap(({ schema }) => kindsIn(describeShape(schema))));
  return [...kinds].map((kind) => {
    const noun = nounOf(kind);
    return {
      name: noun.replace(/^an? /, ''),
      accepted: acceptedForms(kind)
        .slice(noun.length)
        .replace(/^(?:, | in )/, ''),
    };
  });
}

function kindsIn(shape: Shape): Kind[] {
  switch (shape.kind) {
    case 'quantity':
      return [shape.of];
    case 'list':
      return kindsIn(shape.of);
    case 'either':
      return shape.shapes.flatMap(kindsIn);
    case 'map':
      return [
        ...shape.fields.flatMap((field) => kindsIn(field.shape)),
        ...(shape.others === null ? [] : kindsIn(shape.others)),
      ];
    default:
      return [];
  }
}
