import { limits } from '../source/limits.ts';
import { acceptedText } from './accepted-text.ts';
import type { Shape } from './field.ts';

/** What may be written in the place of a shape, in words that follow "Write". */
export function acceptedShape(shape: Shape): string {
  switch (shape.kind) {
    case 'map':
      return acceptedMap(shape.fields.length > 0, shape.others);
    case 'list':
      return acceptedList(shape);
    case 'either':
      return shape.shapes.map(acceptedShape).join('; or ');
    default:
      return acceptedText(shape);
  }
}

function acceptedMap(hasFields: boolean, others: Shape | null): string {
  const own = hasFields ? ['fields of its own'] : [];
  if (others === null) return own.join('');
  const free =
    others.kind === 'limit'
      ? 'any figure of the model with a limit, such as "at least 2.4 m"'
      : `any names, each with ${acceptedShape(others)}`;
  return [...own, free].join(', and ');
}

function acceptedList({ of, most, orOne }: Shape & { readonly kind: 'list' }): string {
  const item = acceptedShape(of);
  if (orOne) return `${item}; or a list of such`;
  // The limit of all lists is more than any of them needs, and says nothing.
  const length = most === null || most === limits.items ? '' : ` of at most ${most}`;
  return `a list${length}, each item ${of.kind === 'map' ? 'with ' : ''}${item}`;
}
