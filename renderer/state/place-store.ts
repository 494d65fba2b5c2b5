import { create } from 'zustand';

interface PlaceState {
  readonly place: string;
  /** Plan field that wants the focus once its place is shown. */
  readonly wantedField: string | null;
  /** Option the user works on: commands act on it. */
  readonly optionId: string | null;
}

export const usePlace = create<PlaceState>(() => ({
  place: 'packs',
  wantedField: null,
  optionId: null,
}));

export const goTo = (place: string): void => usePlace.setState({ place, wantedField: null });
export const chooseOption = (optionId: string | null): void => usePlace.setState({ optionId });

/** Opens a place and brings one of its fields into view, focused. */
export const goToField = (place: string, field: string): void =>
  usePlace.setState({ place, wantedField: field });
export const fieldReached = (): void => usePlace.setState({ wantedField: null });
