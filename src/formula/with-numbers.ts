import type { Formula } from './formula.ts';

/**
 * The right-hand side of a formula with numbers in the places of its symbols: "2 920 mm ×
 * (353.5 kg + 372.5 kg) / 1 645.5 kg". Undefined where a symbol has no number, for sums over
 * rows and integrals, and where nothing is left to see: a single symbol.
 */
export function withNumbers(
  formula: Formula,
  numberOf: (symbol: string) => string | undefined,
): Formula | undefined {
  const side = rightHandSide(formula);
  return side === undefined || side.m === 'symbol' ? undefined : put(side, numberOf);
}

/** What stands behind the first sign of equality, up to what is only said beside it. */
function rightHandSide(formula: Formula): Formula | undefined {
  if (formula.m !== 'row') return formula;
  const from = formula.of.findIndex((f) => f.m === 'operator' && f.text === '=');
  const rest = formula.of.slice(from + 1);
  const end = rest.findIndex(isBeside);
  const side = end < 0 ? rest : rest.slice(0, end);
  const [only] = side;
  return side.length === 1 ? only : side.length === 0 ? undefined : { m: 'row', of: side };
}

const isBeside = (f: Formula): boolean =>
  f.m === 'words' || (f.m === 'operator' && (f.text === ',' || f.text === ';'));

type NumberOf = (symbol: string) => string | undefined;

function put(f: Formula, numberOf: NumberOf): Formula | undefined {
  switch (f.m) {
    case 'symbol': {
      const text = numberOf(f.written);
      return text === undefined ? undefined : { m: 'quantity', text };
    }
    case 'operator':
      return f.text === 'Σ' || f.text === '∫' || f.text === '=' ? undefined : f;
    case 'words':
      return undefined;
    case 'row':
    case 'product': {
      const of = f.of.map((one) => put(one, numberOf));
      return of.every((one) => one !== undefined) ? { m: f.m, of } : undefined;
    }
    case 'power': {
      const base = put(f.base, numberOf);
      return base && { ...f, base };
    }
    case 'fraction': {
      const [top, bottom] = [put(f.top, numberOf), put(f.bottom, numberOf)];
      return top && bottom && { m: 'fraction', top, bottom };
    }
    case 'root':
    case 'group': {
      const of = put(f.of, numberOf);
      return of && { ...f, of };
    }
    default:
      return f;
  }
}
