/** Points and weights of Gauss–Legendre integration on −1 … 1; exact for polynomials below degree 2 n. */
export function gaussPoints(n: number): { x: number; weight: number }[] {
  return Array.from({ length: n }, (_, i) => {
    let x = Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 1;
    for (let step = 0; step < 100; step++) {
      const { value, derivative } = legendre(n, x);
      slope = derivative;
      const next = x - value / derivative;
      if (Math.abs(next - x) < 1e-16) break;
      x = next;
    }
    return { x, weight: 2 / ((1 - x * x) * slope * slope) };
  });
}

function legendre(n: number, x: number): { value: number; derivative: number } {
  let [before, value] = [1, x];
  for (let k = 2; k <= n; k++)
    [before, value] = [value, ((2 * k - 1) * x * value - (k - 1) * before) / k];
  return { value, derivative: (n * (x * value - before)) / (x * x - 1) };
}
