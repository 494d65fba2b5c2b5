/** Today, as far as a season asks. */
export interface Today {
  readonly year: number;
  /** 1 to 12. */
  readonly month: number;
  readonly day: number;
}

export function today(): Today {
  const now = new Date();
  return { year: now.getFullYear(), month: now.getMonth() + 1, day: now.getDate() };
}

/** First day of the season's month that is not past, as `YYYY-MM-DD`; today while that month runs. */
export function nextSeasonStart(firstMonth: number, { year, month, day }: Today): string {
  const startYear = month > firstMonth ? year + 1 : year;
  const startDay = month === firstMonth ? day : 1;
  return `${startYear}-${String(firstMonth).padStart(2, '0')}-${String(startDay).padStart(2, '0')}`;
}
