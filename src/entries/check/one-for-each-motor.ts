import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { designsOf } from '../understand/setup-designs.ts';
import type { EntryCheck } from './entry-check.ts';

const lists = ['turns', 'wound-to', 'turns-left', 'launch-torque'] as const;

/** A list of a flight has one value for each item of motors in its setup; and no more motors ran than there are. */
export const checkOneForEachMotor: EntryCheck = (draft, source) => {
  const designs = designsOf(draft);
  return (draft.flights ?? []).flatMap((flight, index): Problem[] => {
    if (flight === null) return [];
    const setup =
      flight.setup === undefined
        ? designs.findLast(({ from }) => from === null || from <= (flight.date?.date ?? ''))
        : designs.find(({ index: place }) =>
            flight.setup === 'none' ? place === null : draft.setups?.[place ?? -1]?.id === flight.setup,
          );
    const motors = setup?.design.motors;
    if (motors === undefined) return [];
    const problems = lists.flatMap((key): Problem[] => {
      const values = flight[key];
      if (values === undefined || values.length === 1 || values.length === motors.length) return [];
      const path = ['flights', index, key];
      return [
        problemAt(source, path, 'value', 'one-for-each-motor', {
          message: `${fieldName(source, path)} lists ${values.length} values, but \`motors\` has ${motors.length} ${motors.length === 1 ? 'item' : 'items'}. Write one value that holds for all motors, or one for each item of \`motors\`.`,
          found: `${values.length} values`,
          accepted: motors.length === 1 ? '1 value' : `1 value, or ${motors.length}`,
        }),
      ];
    });
    const fitted = motors.reduce((sum, motor) => sum + (motor?.count ?? Number.POSITIVE_INFINITY), 0);
    const ran = flight['motors-run'];
    if (ran === undefined || ran <= fitted) return problems;
    const path = ['flights', index, 'motors-run'];
    return [
      ...problems,
      problemAt(source, path, 'value', 'more-motors-than-fitted', {
        message: `${fieldName(source, path)} is "${ran}", but the model has ${fitted} ${fitted === 1 ? 'motor' : 'motors'}. Write how many ran, or correct the \`count\` of \`motors\`.`,
        found: String(ran),
        accepted: `0 to ${fitted}`,
      }),
    ];
  });
};
