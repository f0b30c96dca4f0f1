import { acceptedForms, exampleOf, nounOf } from './accepted.ts';
import type { NumberTrouble } from './number.ts';
import type { Fault, FaultCode, Kind } from './quantity.ts';

const longestShown = 60;

/** A text as a message quotes it: trimmed, cut where it is very long, without characters that would upset the line. */
export function shown(text: string): string {
  const trimmed = text
    .trim()
    .slice(0, longestShown + 1)
    .replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, '\uFFFD');
  return trimmed.length > longestShown ? `${trimmed.slice(0, longestShown)}…` : trimmed;
}

/** A fault about a text that should have been a quantity of a kind. */
export function faultOf(
  code: FaultCode,
  text: string,
  kind: Kind,
  message: string,
  suggestion?: string,
): Fault {
  const fault = { code, message, found: shown(text), accepted: acceptedForms(kind) };
  return suggestion === undefined ? fault : { ...fault, suggestion };
}

/** Why the number in a text could not be read. `plain` is the text in plain typing, to which the trouble's places refer. */
export function numberFault(text: string, plain: string, trouble: NumberTrouble, kind: Kind): Fault {
  const quoted = `"${shown(text)}"`;
  switch (trouble.what) {
    case 'not-finite':
      return faultOf(
        'impossible-value',
        text,
        kind,
        `${quoted} is impossible: it is not a number that can be reckoned with.`,
      );
    case 'zero-denominator':
      return faultOf('impossible-value', text, kind, `${quoted} is impossible: it divides by zero.`);
    case 'ambiguous': {
      const [first = '', second = ''] = trouble.readings.map((reading) => rewritten(plain, trouble, reading));
      const message = `${quoted} can be read in two ways; write "${first}" or "${second}".`;
      return faultOf('ambiguous-number', text, kind, message);
    }
    case 'grouped': {
      const reading = rewritten(plain, trouble, trouble.readings[0] ?? '');
      const message = `${quoted} has digits in groups, which can be misread; write "${reading}".`;
      return faultOf('ambiguous-number', text, kind, message, reading);
    }
    default: {
      const message = `${quoted} cannot be read as ${nounOf(kind)}; write it like "${exampleOf(kind)}".`;
      return faultOf('not-a-quantity', text, kind, message);
    }
  }
}

function rewritten(
  plain: string,
  place: { readonly start: number; readonly end: number },
  reading: string,
): string {
  return plain.slice(0, place.start) + reading + plain.slice(place.end);
}
