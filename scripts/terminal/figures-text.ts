import type { EntryRecord } from '../../src/almanac/almanac.ts';
import { measureOfFigure } from '../../src/components/measure.ts';
import { workedText } from '../../src/components/worked-text.ts';
import { type Figure, type FigureSet, isPresent } from '../../src/figures/figure.ts';
import { figureDefinition } from '../../src/figures/registry.ts';
import { printable, printableLine } from './printable.ts';

/** All figures of an entry as aligned text: of the headline setup, of each motor, of the other setups, of each flight. */
export function figuresText(record: EntryRecord): string {
  const { entry, headline } = record;
  const blocks = [
    `${printableLine(entry.name)} (${entry.challenge}/${entry.id}), ${setupName(headline.id)}\n`,
    setText(record.figures, ''),
    ...entry.setups.flatMap((setup, index) => {
      const figures = record.setupFigures[index];
      return figures === undefined || setup.id === headline.id
        ? []
        : [
            `${setupName(setup.id)[0]?.toUpperCase()}${setupName(setup.id).slice(1)}\n`,
            setText(figures, '  '),
          ];
    }),
    ...record.flights.flatMap(({ flight, figures }) => [
      `Flight ${flight.number}, ${flight.date.date}\n`,
      setText(figures, '  '),
    ]),
  ];
  return `${blocks.join('\n')}\n${workedBlock(record)}\n${assumptionsText(record)}`;
}

function setupName(id: string | null): string {
  return id === null ? 'as first written' : `setup ${id}`;
}

function setText(figures: FigureSet, indent: string): string {
  const blocks = [tableText([...figures.entry.values()], indent)];
  figures.motors.forEach((motor, index) => {
    if (motor.size > 0)
      blocks.push(`${indent}Motor ${index + 1}\n${tableText([...motor.values()], `${indent}  `)}`);
  });
  return blocks.join('');
}

function tableText(figures: readonly Figure[], indent: string): string {
  const rows = figures.map((figure) =>
    isPresent(figure)
      ? [nameOf(figure), measureOfFigure(figure).metric, figure.basis]
      : [nameOf(figure), '–', figure.absent],
  );
  const widths = [0, 1].map((column) => Math.max(0, ...rows.map((row) => (row[column] ?? '').length)));
  return rows
    .map(
      ([name = '', value = '', rest = '']) =>
        `${indent}${name.padEnd(widths[0] ?? 0)}  ${value.padStart(widths[1] ?? 0)}  ${printable(rest)}\n`,
    )
    .join('');
}

function nameOf(figure: Figure): string {
  return figureDefinition(figure.id)?.name ?? figure.id;
}

/** How the figures of the headline setup came about with their numbers. */
function workedBlock({ figures }: EntryRecord): string {
  const whole = [...figures.entry.values()].map((figure) => ({ figure, of: '' }));
  const ofMotors = figures.motors.flatMap((motor, index) =>
    [...motor.values()].map((figure) => ({ figure, of: `, motor ${index + 1}` })),
  );
  const lines = [...whole, ...ofMotors].flatMap(({ figure, of }) => {
    const worked = isPresent(figure) ? workedText(figure) : '';
    return worked === '' ? [] : [`  ${nameOf(figure)}${of}: ${printable(worked)}\n`];
  });
  return `With their numbers\n${lines.join('')}`;
}

function assumptionsText(record: EntryRecord): string {
  const figures = [record.figures, ...record.flights.map(({ figures }) => figures)].flatMap((set) => [
    ...set.entry.values(),
    ...set.motors.flatMap((motor) => [...motor.values()]),
  ]);
  const uses = new Map<string, Set<string>>();
  for (const figure of figures)
    if (isPresent(figure))
      for (const assumption of figure.assumptions)
        uses.set(assumption, (uses.get(assumption) ?? new Set()).add(nameOf(figure)));
  if (uses.size === 0) return 'No assumption was needed.\n';
  const lines = [...uses].map(
    ([assumption, names]) => `  ${printable(assumption)}: ${[...names].join(', ')}\n`,
  );
  return `Assumed or noted\n${lines.join('')}`;
}
