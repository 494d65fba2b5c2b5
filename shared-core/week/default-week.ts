import type { Plan } from '../plan/schema/plan.ts';
import type { Week } from '../plan/schema/week.ts';

/** A week to start from: the headline outing on Saturday and Sunday afternoon, charging at night, a middle-European year. */
export function newWeek(plan: Pick<Plan, 'headlineOuting'>): Week {
  return {
    usage: [
      {
        id: 'weekend',
        outingId: plan.headlineOuting,
        days: ['sat', 'sun'],
        startMin: 14 * 60,
        durationMin: null,
        chancePercent: 100,
      },
    ],
    windows: [
      {
        id: 'night',
        name: 'Night',
        days: ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'],
        fromMin: 20 * 60,
        toMin: 7 * 60,
        attended: false,
      },
    ],
    tariff: { pricePerKWh: 0.32, cheap: null },
    place: {
      kind: 'ventilated-room',
      openingCm2: null,
      onEscapeRoute: false,
      chargeTemperatureC: null,
    },
    climate: { warmestMonthC: 19, coldestMonthC: 1, warmestMonth: 7 },
    season: { firstMonth: 4, weeks: 28, seed: 1 },
    isolatedWhenParked: true,
    minimumPercent: 20,
    packCount: 1,
    sharedCharger: true,
    routine: { trigger: 'after-use', ownDays: [], untilPercent: null },
  };
}
