import { newWeek } from '../../week/default-week.ts';
import type { Week } from '../schema/week.ts';

/** The cart works four half days a week in the picking season and is charged in the barn at night. Invented. */
export function orchardWeek(): Week {
  return {
    ...newWeek({ headlineOuting: 'picking-shift' }),
    usage: [
      {
        id: 'picking',
        outingId: 'picking-shift',
        days: ['mon', 'tue', 'thu', 'fri'],
        startMin: 8 * 60,
        durationMin: 50,
        chancePercent: 90,
      },
      {
        id: 'late-picking',
        outingId: 'picking-shift',
        days: ['sat'],
        startMin: 9 * 60,
        durationMin: 90,
        chancePercent: 60,
      },
    ],
    tariff: { pricePerKWh: 0.32, cheap: { pricePerKWh: 0.22, fromMin: 22 * 60, toMin: 6 * 60 } },
    place: {
      kind: 'ventilated-room',
      openingCm2: 200,
      onEscapeRoute: false,
      chargeTemperatureC: null,
    },
    climate: { warmestMonthC: 20, coldestMonthC: 2, warmestMonth: 7 },
    season: { firstMonth: 6, weeks: 20, seed: 7 },
    isolatedWhenParked: false,
  };
}

/** The scooter goes to the market every weekday and is charged in the hall at night. Invented. */
export function marketWeek(): Week {
  return {
    ...newWeek({ headlineOuting: 'market-day' }),
    usage: [
      {
        id: 'market',
        outingId: 'market-day',
        days: ['mon', 'tue', 'wed', 'thu', 'fri'],
        startMin: 9 * 60,
        durationMin: 60,
        chancePercent: 85,
      },
      {
        id: 'sunday',
        outingId: 'market-day',
        days: ['sun'],
        startMin: 15 * 60,
        durationMin: 100,
        chancePercent: 50,
      },
    ],
    place: { kind: 'closed-room', openingCm2: null, onEscapeRoute: true, chargeTemperatureC: 18 },
    season: { firstMonth: 1, weeks: 50, seed: 3 },
    isolatedWhenParked: false,
  };
}

/** Arrivals on Friday and Saturday, departures on Sunday; charged under a roof. Invented. */
export function campsiteWeek(): Week {
  return {
    ...newWeek({ headlineOuting: 'luggage-round' }),
    usage: [
      {
        id: 'arrivals',
        outingId: 'luggage-round',
        days: ['fri', 'sat'],
        startMin: 15 * 60,
        durationMin: 150,
        chancePercent: 100,
      },
      {
        id: 'departures',
        outingId: 'luggage-round',
        days: ['sun'],
        startMin: 9 * 60,
        durationMin: 120,
        chancePercent: 100,
      },
      {
        id: 'weekday',
        outingId: 'luggage-round',
        days: ['tue', 'wed'],
        startMin: 11 * 60,
        durationMin: 60,
        chancePercent: 50,
      },
    ],
    place: { kind: 'open-air', openingCm2: null, onEscapeRoute: false, chargeTemperatureC: null },
    season: { firstMonth: 5, weeks: 22, seed: 5 },
  };
}
