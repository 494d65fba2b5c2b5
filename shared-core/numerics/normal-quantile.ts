/** Coefficients of the three rational approximations, highest power first. */
const middle = {
  over: [
    2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946,
    1971.5909503065513, 133.14166789178438, 3.3871328727963665,
  ],
  under: [
    5226.495278852546, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751,
    687.1870074920579, 42.31333070160091, 1,
  ],
};
const near = {
  over: [
    0.0007745450142783414, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684,
    3.6478483247632045, 5.769497221460691, 4.630337846156546, 1.4234371107496835,
  ],
  under: [
    1.0507500716444169e-9, 0.0005475938084995345, 0.015198666563616457, 0.14810397642748008,
    0.6897673349851, 1.6763848301838038, 2.053191626637759, 1,
  ],
};
const far = {
  over: [
    2.0103343992922881e-7, 2.7115555687434876e-5, 0.0012426609473880784, 0.026532189526576124,
    0.29656057182850487, 1.7848265399172913, 5.463784911164114, 6.657904643501103,
  ],
  under: [
    2.0442631033899397e-15, 1.421511758316446e-7, 1.8463183175100548e-5, 0.0007868691311456133,
    0.014875361290850615, 0.1369298809227358, 0.599832206555888, 1,
  ],
};

/**
 * Quantile of the standard normal distribution: the z below which a share p of it lies.
 *
 * @param share p, above 0 and below 1
 * @returns z, relative error about 1e-16
 * @throws RangeError outside (0, 1): a bug of the caller
 *
 * Source: Wichura, Algorithm AS 241 (PPND16), Appl. Statistics 37 (1988) 477.
 */
export function normalQuantile(share: number): number {
  if (!(share > 0 && share < 1)) throw new RangeError(`no normal quantile of ${share}`);
  const fromMiddle = share - 0.5;
  if (Math.abs(fromMiddle) <= 0.425)
    return fromMiddle * ratio(middle, 0.180625 - fromMiddle * fromMiddle);
  const tail = Math.sqrt(-Math.log(Math.min(share, 1 - share)));
  const size = tail <= 5 ? ratio(near, tail - 1.6) : ratio(far, tail - 5);
  return fromMiddle < 0 ? -size : size;
}

function ratio(
  { over, under }: { readonly over: readonly number[]; readonly under: readonly number[] },
  at: number,
): number {
  return polynomial(over, at) / polynomial(under, at);
}

function polynomial(coefficients: readonly number[], at: number): number {
  return coefficients.reduce((sum, coefficient) => sum * at + coefficient, 0);
}
