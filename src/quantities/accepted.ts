import type { Kind } from './quantity.ts';
import { unitsOf } from './units.ts';

/** The kind in a sentence, and texts that are accepted, the plainest first. */
const words: Readonly<Record<Kind, { readonly noun: string; readonly examples: readonly string[] }>> = {
  number: { noun: 'a number', examples: ['3.2', '3 1/8'] },
  length: { noun: 'a length', examples: ['3.20 m', '10 ft 6 in', '3.20 m ± 5 mm'] },
  area: { noun: 'an area', examples: ['87.6 dm2', '9.4 sq ft'] },
  mass: { noun: 'a mass', examples: ['643 g', '1 lb 7 oz', '643 g ± 1 g'] },
  force: { noun: 'a force', examples: ['0.65 N', '65 g'] },
  torque: { noun: 'a torque', examples: ['61 mN·m', '8.6 ozf·in'] },
  time: { noun: 'a time', examples: ['41.6 s', '2:05.4', '2 min 5.4 s'] },
  speed: { noun: 'a speed', examples: ['1.5 m/s', '5 km/h'] },
  angle: { noun: 'an angle', examples: ['3°', '-1.5 deg'] },
  temperature: { noun: 'a temperature', examples: ['14 °C', '57 °F'] },
  pressure: { noun: 'a pressure', examples: ['1014 hPa', '29.9 inHg'] },
  'specific-energy': { noun: 'an energy per mass', examples: ['12 J/g', '4000 ft·lbf/lb'] },
  loading: { noun: 'a loading', examples: ['7.3 g/dm2', '2.4 oz/ft2'] },
  density: { noun: 'a density', examples: ['0.93 g/cm3', '930 kg/m3'] },
  share: { noun: 'a share', examples: ['38 %', '0.38'] },
  turns: { noun: 'a number of turns', examples: ['640', '54 x 10'] },
  impulse: { noun: 'an impulse', examples: ['8.9 N·s'] },
  energy: { noun: 'an energy', examples: ['370 J'] },
  power: { noun: 'a power', examples: ['2.1 W'] },
  'mass-per-length': { noun: 'a mass per length', examples: ['0.8 g/mm'] },
  'time-per-mass': { noun: 'a time per mass', examples: ['1.4 s/g'] },
};

/** The kind with its article, such as `a length`. */
export function nounOf(kind: Kind): string {
  return words[kind].noun;
}

/** A text of the kind that is accepted. */
export function exampleOf(kind: Kind): string {
  return words[kind].examples[0] ?? '';
}

/** A text of the kind with a stated uncertainty that is accepted. */
export function exampleWithUncertainty(kind: Kind): string {
  return kind === 'temperature' ? '14 °C ± 1 °C' : `${exampleOf(kind)} ± 1 %`;
}

/** The units of the kind in words: `mm, cm, m, in, ft or yd`; empty for kinds that are written bare. */
export function unitsInWords(kind: Kind): string {
  return inWords(
    unitsOf(kind)
      .map(({ symbol }) => symbol)
      .filter((symbol) => symbol !== '1'),
  );
}

function inWords(items: readonly string[]): string {
  const last = items.at(-1) ?? '';
  return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} or ${last}`;
}

/** What may be written for a kind: its units, with examples. */
export function acceptedForms(kind: Kind): string {
  const examples = inWords(words[kind].examples.map((example) => `"${example}"`));
  const bare = kind === 'number' || kind === 'share' || kind === 'turns';
  return bare
    ? `${nounOf(kind)}, such as ${examples}`
    : `${nounOf(kind)} in ${unitsInWords(kind)}, such as ${examples}`;
}
