import { leaveOutMatrix } from '../support/leave-out.ts';

/** Prints, for every subset of the measured runs, how well it predicts each run left out. */
export function printLeaveOut(): void {
  const rows = leaveOutMatrix();
  if (rows.length === 0) return;
  console.log('\nFitted on some measured runs, tried on another\n');
  console.log(
    'Block                To V   Fitted on             Tried on   Time off %   Volts rms mV',
  );
  for (const { block, toVoltageV, fitted, tried, timePercent, rmsMv } of rows) {
    const cells = [
      block.padEnd(20),
      String(toVoltageV ?? 'BMS').padEnd(6),
      fitted.join(', ').padEnd(21),
      tried.padEnd(10),
      timePercent.toFixed(1).padStart(10),
      rmsMv.toFixed(0).padStart(14),
    ];
    console.log(cells.join(' '));
  }
}
