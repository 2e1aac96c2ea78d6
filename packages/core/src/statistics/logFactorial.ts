/** Natural logarithm of n!, for whole n of 0 or more, as the sum of logarithms. */
export function logFactorial(n: number): number {
  let sum = 0;
  for (let i = 2; i <= n; i++) sum += Math.log(i);
  return sum;
}
