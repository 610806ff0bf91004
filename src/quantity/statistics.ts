/** Quantiles and effective degrees of freedom for coverage intervals (JCGM 100:2008, Annex G). */

// Rational approximations of Wichura, "Algorithm AS 241: The percentage points of the normal
// distribution", Applied Statistics 37 (1988): about 16 digits. Lowest power first.
const NEAR = {
  top: [
    3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946,
    45921.95393154987, 67265.7709270087, 33430.57558358813, 2509.0809287301227,
  ],
  bottom: [
    1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597,
    39307.89580009271, 28729.085735721943, 5226.495278852854,
  ],
};
const MIDDLE = {
  top: [
    1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045,
    1.2704582524523684, 0.2417807251774506, 0.022723844989269184, 0.0007745450142783414,
  ],
  bottom: [
    1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008,
    0.015198666563616457, 0.0005475938084995345, 1.0507500716444169e-9,
  ],
};
const FAR = {
  top: [
    6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487,
    0.026532189526576124, 0.0012426609473880784, 2.7115555687434876e-5, 2.0103343992922881e-7,
  ],
  bottom: [
    1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133,
    1.8463183175100548e-5, 1.421511758316446e-7, 2.0442631033899397e-15,
  ],
};

const polynomial = (coefficients: readonly number[], x: number): number =>
  coefficients.reduceRight((sum, c) => sum * x + c, 0);

const ratio = (r: { top: readonly number[]; bottom: readonly number[] }, x: number): number =>
  polynomial(r.top, x) / polynomial(r.bottom, x);

function needProbability(p: number): void {
  if (!(p > 0 && p < 1)) throw new RangeError(`probability ${p} is not between 0 and 1`);
}

/**
 * Quantile of the standard normal distribution: the z that a variable stays below with
 * probability p, so normalQuantile(0.975) is 1.96.
 * @throws RangeError unless 0 < p < 1.
 */
export function normalQuantile(p: number): number {
  needProbability(p);
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) return q * ratio(NEAR, 0.180625 - q * q);
  const r = Math.sqrt(-Math.log(Math.min(p, 1 - p)));
  return Math.sign(q) * (r <= 5 ? ratio(MIDDLE, r - 1.6) : ratio(FAR, r - 5));
}

// Lanczos approximation with g = 7, n = 9: about 15 digits.
const LANCZOS = [
  0.9999999999998099, 676.5203681218851, -1259.1392167224028, 771.3234287776531, -176.6150291621406,
  12.507343278686905, -0.13857109526572012, 9.984369578019572e-6, 1.5056327351493116e-7,
];

/** ln Γ(x) for x > 0. */
function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const y = x - 1;
  const sum = LANCZOS.reduce((s, c, i) => (i === 0 ? c : s + c / (y + i)), 0);
  const t = y + 7.5;
  return 0.5 * Math.log(2 * Math.PI) + (y + 0.5) * Math.log(t) - t + Math.log(sum);
}

/** Continued fraction of the incomplete beta function, by Lentz's method. */
function betaFraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  const apart = (v: number) => (Math.abs(v) < tiny ? tiny : v);
  let c = 1;
  let d = 1 / apart(1 - ((a + b) * x) / (a + 1));
  let h = d;
  for (let m = 1; m <= 10000; m++) {
    for (const k of [
      (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m)),
      (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1)),
    ]) {
      d = 1 / apart(1 + k * d);
      c = apart(1 + k / c);
      h *= c * d;
    }
    if (Math.abs(c * d - 1) < 1e-16) break;
  }
  return h;
}

/** Regularised incomplete beta function I_x(a, b), 0 ≤ x ≤ 1. */
function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(
    logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x),
  );
  return x < (a + 1) / (a + b + 2)
    ? (front * betaFraction(x, a, b)) / a
    : 1 - (front * betaFraction(1 - x, b, a)) / b;
}

/** Probability that |T| is above t, for Student's T with `dof` degrees of freedom; t ≥ 0. */
const studentTails = (t: number, dof: number): number =>
  t < 1
    ? 1 - incompleteBeta((t * t) / (dof + t * t), 0.5, dof / 2)
    : incompleteBeta(dof / (dof + t * t), dof / 2, 0.5);

/** From here on the first term of the expansion in 1/dof about the normal quantile is enough. */
const NEARLY_NORMAL = 1e6;

/**
 * Quantile of Student's t-distribution: the t that a variable with `dof` degrees of freedom
 * (whole or not, Infinity for the normal distribution) stays below with probability p.
 * @throws RangeError unless 0 < p < 1 and dof > 0.
 */
export function studentQuantile(p: number, dof: number): number {
  if (!(dof > 0)) throw new RangeError(`${dof} degrees of freedom are not above zero`);
  const z = normalQuantile(p);
  if (dof >= NEARLY_NORMAL) return z + (z ** 3 + z) / (4 * dof);
  if (p === 0.5) return 0;
  const tails = 2 * Math.min(p, 1 - p);
  return Math.sign(p - 0.5) * halve((t) => studentTails(t, dof) - tails);
}

/** Zero of a falling function of t > 0, by doubling and then halving a bracket. */
function halve(falling: (t: number) => number): number {
  let high = 1;
  while (falling(high) > 0 && high < 1e300) high *= 2;
  let low = high === 1 ? 0 : high / 2;
  for (let i = 0; i < 200 && high - low > 1e-14 * high; i++) {
    const middle = (low + high) / 2;
    if (falling(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * The factor t_p(ν) of JCGM 100:2008, Table G.2: an interval x ± t_p(ν)·u holds the value with
 * probability p. Two-sided: studentT(0.95, 5) is 2.57, studentT(0.9545, Infinity) is 2.
 * @throws RangeError unless 0 < p < 1 and dof > 0.
 */
export const studentT = (p: number, dof: number): number => studentQuantile((1 + p) / 2, dof);

/**
 * Effective degrees of freedom u⁴ / Σ(cᵢ⁴/νᵢ) of independent contributions, each the standard
 * uncertainty `c` it makes in the result and its degrees of freedom (Welch–Satterthwaite,
 * JCGM 100:2008, equation G.2b). Infinity when no contribution has finite ones.
 */
export function welchSatterthwaite(
  contributions: readonly { readonly c: number; readonly dof: number }[],
): number {
  let variance = 0;
  let sum = 0;
  for (const { c, dof } of contributions) {
    variance += c * c;
    if (c !== 0) sum += c ** 4 / dof;
  }
  return sum === 0 ? Infinity : variance ** 2 / sum;
}
