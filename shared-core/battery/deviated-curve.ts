/** Charges at which the open-circuit curve may deviate from the usual one of its chemistry. Denser where curves bend. */
export const openCircuitNodes: readonly number[] = [
  0, 0.01, 0.02, 0.04, 0.06, 0.08, 0.1, 0.13, 0.16, 0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.55, 0.6,
  0.65, 0.7, 0.75, 0.8, 0.85, 0.9, 0.94, 0.97, 1,
];

const tableLast = 400;

/** Usual open-circuit volts of a cell at the table's charges, 0 to 1. */
export function usualTable(curve: (charge: number) => number): Float64Array {
  return Float64Array.from({ length: tableLast + 1 }, (_, index) => curve(index / tableLast));
}

/** The usual curve plus deviations at the nodes, linear between them, kept from falling as charge rises. */
export function deviatedTable(usual: Float64Array, deviations: ArrayLike<number>): Float64Array {
  const table = new Float64Array(usual.length);
  let node = 0;
  for (let index = 0; index < table.length; index += 1) {
    const charge = index / tableLast;
    while (node < openCircuitNodes.length - 2 && charge > openCircuitNodes[node + 1]!) node += 1;
    const low = openCircuitNodes[node]!;
    const share = (charge - low) / (openCircuitNodes[node + 1]! - low);
    const value = usual[index]! + deviations[node]! * (1 - share) + deviations[node + 1]! * share;
    table[index] = index === 0 ? value : Math.max(value, table[index - 1]! + 1e-6);
  }
  return table;
}

/** Charge at which a rising table passes a voltage; 0 below it, 1 above it. */
export function chargeAt(table: Float64Array, voltageV: number): number {
  if (voltageV <= table[0]!) return 0;
  const above = table.findIndex((volts) => volts >= voltageV);
  if (above < 0) return 1;
  const low = table[above - 1]!;
  return (above - 1 + (voltageV - low) / (table[above]! - low)) / tableLast;
}

/** Entries of the table whose mean slope carries on below empty: the last fiftieth of the charge. */
const tailEntries = tableLast / 50;

/**
 * Open-circuit volts at a head. Below empty the curve carries on as it came, so that a replay past the end still tells how
 * far past it is; above full it is held.
 */
export function readTable(table: Float64Array, head: number): number {
  if (head <= 0)
    return table[0]! + ((table[tailEntries]! - table[0]!) / tailEntries) * tableLast * head;
  if (head >= 1) return table[tableLast]!;
  const place = head * tableLast;
  const index = Math.floor(place);
  const low = table[index]!;
  return low + (table[index + 1]! - low) * (place - index);
}
