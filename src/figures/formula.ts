/** A formula as it is built up; both its printed form and its plain text come from it. */
export type Formula =
  | Letter
  | { readonly is: 'number'; readonly digits: string }
  /** A number with a unit, as people read it. */
  | { readonly is: 'quantity'; readonly digits: string; readonly unit: string }
  | { readonly is: 'words'; readonly text: string }
  | Chain
  | { readonly is: 'fraction'; readonly over: Formula; readonly under: Formula }
  | { readonly is: 'power'; readonly base: Formula; readonly exponent: string }
  | { readonly is: 'root'; readonly of: Formula }
  | { readonly is: 'total'; readonly sign: 'Σ' | '∫'; readonly of: Formula; readonly along: Formula | null }
  | { readonly is: 'applied'; readonly name: Letter; readonly to: Formula };

/** A letter that stands for something; a formula is shown with what its symbols mean. */
export interface Letter {
  readonly is: 'symbol';
  readonly letter: string;
  readonly subscript: string;
  /** Such as "wing area"; empty where it needs no word. */
  readonly means: string;
}

/** Parts with the same sign between them. */
interface Chain {
  readonly is: 'chain';
  readonly sign: Sign;
  readonly parts: readonly Formula[];
}

/** From loose to tight; `·` stands between symbols, `×` between words and numbers with units. */
type Sign = '=' | '≤' | '+' | '−' | '·' | '×';

const tightness: Readonly<Record<Sign, number>> = { '=': 0, '≤': 0, '+': 1, '−': 1, '·': 2, '×': 2 };
const atom = 4;

export function symbol(letter: string, means: string, subscript = ''): Letter {
  return { is: 'symbol', letter, subscript, means };
}

export function number(digits: string): Formula {
  return { is: 'number', digits };
}

export function quantity(digits: string, unit: string): Formula {
  return unit === '' ? number(digits) : { is: 'quantity', digits, unit };
}

export function words(text: string): Formula {
  return { is: 'words', text };
}

const chain =
  (sign: Sign) =>
  (...parts: readonly Formula[]): Formula => ({ is: 'chain', sign, parts });
export const equals = chain('=');
export const atMost = chain('≤');
export const sum = chain('+');
export const minus = chain('−');
export const product = chain('·');
export const times = chain('×');

export function fraction(over: Formula, under: Formula): Formula {
  return { is: 'fraction', over, under };
}

export function power(base: Formula, exponent: string): Formula {
  return { is: 'power', base, exponent };
}

export function root(of: Formula): Formula {
  return { is: 'root', of };
}

/** The sum over all of them. */
export function total(of: Formula): Formula {
  return { is: 'total', sign: 'Σ', of, along: null };
}

export function integral(of: Formula, along: Formula): Formula {
  return { is: 'total', sign: '∫', of, along };
}

/** A function of something, such as W(λ). */
export function applied(name: Letter, to: Formula): Formula {
  return { is: 'applied', name, to };
}

/** How tightly a formula holds together, from 0 for an equation to an atom, which never needs brackets. */
function holds(formula: Formula): number {
  switch (formula.is) {
    case 'chain':
      return formula.parts.length === 1 ? holds(formula.parts[0]!) : tightness[formula.sign];
    case 'total':
      return 1;
    case 'fraction':
      return 2;
    // 3 m² is not (3 m)².
    case 'quantity':
    case 'power':
      return 3;
    default:
      return atom;
  }
}

/** A part of a chain needs brackets where it holds more loosely than the sign, or as loosely after a minus. */
function partNeedsBrackets({ sign, parts }: Chain, part: Formula, index: number): boolean {
  const own = holds(part);
  if (part.is === 'total' && index === parts.length - 1) return false;
  return own < tightness[sign] || (sign === '−' && index > 0 && own === tightness[sign]);
}

const raisedDigits: Readonly<Record<string, string>> = { '2': '²', '3': '³' };

/** A formula in one line of plain text, such as "b²/S". */
export function toText(formula: Formula): string {
  const within = (part: Formula, needs: boolean) => (needs ? `(${toText(part)})` : toText(part));
  switch (formula.is) {
    case 'symbol':
      return formula.subscript === '' ? formula.letter : `${formula.letter}_${formula.subscript}`;
    case 'number':
      return formula.digits;
    case 'quantity':
      return formula.unit === '°' ? `${formula.digits}°` : `${formula.digits}\u00a0${formula.unit}`;
    case 'words':
      return formula.text;
    case 'chain': {
      const { sign, parts } = formula;
      const between = sign === '·' ? sign : ` ${sign} `;
      const last = parts.length - 1;
      return parts
        .map((part, index) =>
          // a/b·c could be read either way.
          within(
            part,
            partNeedsBrackets(formula, part, index) ||
              (part.is === 'fraction' && tightness[sign] === 2 && index < last),
          ),
        )
        .join(between);
    }
    case 'fraction': {
      const over = within(formula.over, holds(formula.over) < 2 || formula.over.is === 'fraction');
      const under = within(formula.under, holds(formula.under) < 3);
      return [over, under].every((side) => /^\S*$|^\([^()]*\)$/.test(side))
        ? `${over}/${under}`
        : `${over} / ${under}`;
    }
    case 'power':
      return `${within(formula.base, holds(formula.base) < atom)}${raisedDigits[formula.exponent] ?? `^${formula.exponent}`}`;
    case 'root':
      return `√${within(formula.of, holds(formula.of) < atom)}`;
    case 'total': {
      const of = within(formula.of, holds(formula.of) < 2);
      return formula.along === null ? `Σ ${of}` : `∫${of} d${toText(formula.along)}`;
    }
    case 'applied':
      return `${toText(formula.name)}(${toText(formula.to)})`;
  }
}

/** A formula as MathML, one `math` element that needs neither script nor style. */
export function toMathML(formula: Formula): string {
  return `<math displaystyle="true">${markup(formula)}</math>`;
}

function markup(formula: Formula): string {
  const within = (part: Formula, needs: boolean) => (needs ? bracketed(part) : markup(part));
  switch (formula.is) {
    case 'symbol': {
      const letter = element('mi', escaped(formula.letter));
      return formula.subscript === ''
        ? letter
        : element('msub', letter + element('mtext', escaped(formula.subscript)));
    }
    case 'number':
      return element('mn', formula.digits);
    case 'quantity':
      return element(
        'mrow',
        `${element('mn', formula.digits)}${element('mtext', `\u00a0${escaped(formula.unit)}`)}`,
      );
    case 'words':
      return element('mtext', escaped(formula.text));
    case 'chain': {
      const { sign, parts } = formula;
      const shown = parts.map((part, index) => within(part, partNeedsBrackets(formula, part, index)));
      return element('mrow', shown.join(element('mo', sign)));
    }
    case 'fraction':
      return element('mfrac', markup(formula.over) + markup(formula.under));
    case 'power':
      return element(
        'msup',
        within(formula.base, holds(formula.base) < atom) + element('mn', formula.exponent),
      );
    case 'root':
      return element('msqrt', markup(formula.of));
    case 'total': {
      const of = within(formula.of, holds(formula.of) < 2);
      const along =
        formula.along === null ? '' : `<mspace width="0.17em"/>${element('mi', 'd')}${markup(formula.along)}`;
      return element('mrow', `${element('mo', formula.sign === 'Σ' ? '∑' : '∫')}${of}${along}`);
    }
    case 'applied':
      return element('mrow', markup(formula.name) + bracketed(formula.to));
  }
}

function bracketed(formula: Formula): string {
  return element('mrow', `${element('mo', '(')}${markup(formula)}${element('mo', ')')}`);
}

function element(name: string, inside: string): string {
  return `<${name}>${inside}</${name}>`;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
}

/** The symbols of a formula in the order in which they come, each once. */
export function symbolsOf(formula: Formula): Letter[] {
  switch (formula.is) {
    case 'symbol':
      return [formula];
    case 'chain':
      return unique(formula.parts.flatMap(symbolsOf));
    case 'fraction':
      return unique([...symbolsOf(formula.over), ...symbolsOf(formula.under)]);
    case 'power':
      return symbolsOf(formula.base);
    case 'root':
      return symbolsOf(formula.of);
    case 'total':
      return unique([...symbolsOf(formula.of), ...(formula.along === null ? [] : symbolsOf(formula.along))]);
    case 'applied':
      return unique([formula.name, ...symbolsOf(formula.to)]);
    default:
      return [];
  }
}

function unique(symbols: readonly Letter[]): Letter[] {
  return [...new Set(symbols)];
}
