import { SIGN_WORDS, type SignId } from '../../../src/data/index.ts';

/** What stands in each sign, drawn by us after ISO 7010, in a field of 100 × 88. */
const MARKS: Readonly<Record<SignId, string>> = {
  W001: 'M46 34h8l-2 26h-4zM46 65h8v8h-8z',
  W006: 'M34 36h10v18a6 6 0 0 0 12 0V36h10v18a16 16 0 0 1-32 0zM34 30h10v4H34zM56 30h10v4H56z',
  W012: 'M53 28 38 54h11l-4 20 17-27H51l8-19z',
  W015: 'M48 26h4v8h-4zM30 36h40v5H30zM36 44h28v14H36zM46 62h8v3h-8zM38 68h24v6H38z',
  W021: 'M50 26c3 12 14 16 14 30a14 14 0 0 1-28 0c0-6 3-9 5-13 2 4 4 5 5 7 3-8 0-14 4-24zM34 74h32v4H34z',
  W029: 'M28 58h40v14H28zM68 62h6v6h-6zM22 52l8-8 3 3-8 8zM36 46l4-12 4 1-3 12zM54 46l2-14 4 1-2 13z',
  M004: 'M22 38h24a8 8 0 0 1-2 16H28a9 9 0 0 1-6-16zM54 38h24a9 9 0 0 1-6 16H56a8 8 0 0 1-2-16zM46 42h8v5h-8z',
  M009: 'M36 74V50l-8-10 5-4 8 8V22h6v20h3V18h6v24h3V22h6v34l-5 18z',
  M021: 'M46 20h4v14h-4zM56 20h4v14h-4zM40 34h26v12a13 13 0 0 1-26 0zM50 58h6v12h-6zM24 72l50-46 4 5-50 46z',
};

/** A sign with its words: a triangle warns, a disc tells what to do. */
export const IsoSign = ({ sign }: { readonly sign: SignId }) => (
  <span className="iso-sign">
    <svg viewBox="0 0 100 88" aria-hidden="true">
      {sign.startsWith('W') ? (
        <>
          <path className="sign-edge" d="M50 2 98 86H2z" />
          <path className="sign-field" d="M50 14 88 80H12z" />
          <path className="sign-mark" d={MARKS[sign]} transform="translate(15 21) scale(.7)" />
        </>
      ) : (
        <>
          <circle className="sign-mark" cx="50" cy="44" r="42" />
          <path className="sign-field" d={MARKS[sign]} transform="translate(15 13) scale(.7)" />
        </>
      )}
    </svg>
    {SIGN_WORDS[sign]}
  </span>
);
