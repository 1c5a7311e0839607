/** What the tests use of two libraries that come without types. */
declare module 'bessel' {
  export function besseli(x: number, order: number): number;
  export function besselk(x: number, order: number): number;
}

declare module 'jstat' {
  interface OneShape {
    inv(p: number, dof: number): number;
    cdf(x: number, dof: number): number;
  }
  const jstat: {
    readonly studentt: OneShape;
    readonly normal: { cdf(x: number, mean: number, s: number): number };
    readonly centralF: { cdf(x: number, above: number, below: number): number };
    readonly tukey: { inv(p: number, groups: number, dof: number): number };
  };
  export default jstat;
}
