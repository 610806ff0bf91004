/** Would be read as markup, code, mathematics and escapes if it were not set as data. */
export const LITERAL = '#panic("x") $x$ *b* [y] \\ _i_ @z <l> // c';
/** No font of the repository has it. */
export const NO_GLYPH = '漢';
export const GLYPHS = '± · − ² ³ ° Σ Δ → ≤ ≥ µ Ω √ × Ł ő';
