import type { ReactNode } from 'react';

/** Line drawings on a 20 x 20 grid, drawn for this program; they always stand beside or under a name. */
const drawings = {
  undo: <path d="M7.5 4.5 4 8l3.5 3.5M4 8h7.5a4 4 0 0 1 0 8H8" />,
  redo: <path d="M12.5 4.5 16 8l-3.5 3.5M16 8H8.5a4 4 0 0 0 0 8H12" />,
  plus: <path d="M10 4.5v11M4.5 10h11" />,
  minus: <path d="M4.5 10h11" />,
  close: <path d="m5.5 5.5 9 9m0-9-9 9" />,
  more: <path d="M4.5 10h.01M10 10h.01M15.5 10h.01" strokeWidth="2.6" />,
  up: <path d="m5 12 5-5 5 5" />,
  down: <path d="m5 8 5 5 5-5" />,
  left: <path d="m12 5-5 5 5 5" />,
  right: <path d="m8 5 5 5-5 5" />,
  search: <path d="M13 13l3.5 3.5M14.5 9a5.5 5.5 0 1 1-11 0 5.5 5.5 0 0 1 11 0Z" />,
  copy: <path d="M7 7h9v9H7zM13 7V4H4v9h3" />,
  trash: <path d="M4 6h12M8 6V4h4v2M6 6l.6 10h6.8L14 6" />,
  help: <path d="M7.8 7.8a2.3 2.3 0 1 1 3.6 1.9c-.9.6-1.4 1-1.4 2M10 14.4h.01" />,
  settings: <path d="M3.5 6.5h7m4 0h2M3.5 13.5h2m4 0h7M12.5 4.7v3.6M7.5 11.7v3.6" />,
  slider: <path d="M3 10h5.2m4.6 0H17M10.5 7.7a2.3 2.3 0 1 0 0 4.6 2.3 2.3 0 0 0 0-4.6Z" />,
  file: <path d="M5 3.5h6.5L15 7v9.5H5zM11.5 3.5V7H15" />,
  picture: <path d="M3.5 4.5h13v11h-13zM3.5 13l4-4 3.5 3.5 2-2 3.5 3.5" />,
  table: <path d="M3.5 4.5h13v11h-13zM3.5 8.3h13M3.5 12h13M8.5 4.5v11" />,
  zoomIn: <path d="M13 13l3.5 3.5M14.5 9a5.5 5.5 0 1 1-11 0 5.5 5.5 0 0 1 11 0ZM9 6.5v5M6.5 9h5" />,
  zoomOut: <path d="M13 13l3.5 3.5M14.5 9a5.5 5.5 0 1 1-11 0 5.5 5.5 0 0 1 11 0ZM6.5 9h5" />,
  fit: <path d="M3.5 7V3.5H7M13 3.5h3.5V7M16.5 13v3.5H13M7 16.5H3.5V13" />,
  check: <path d="m4.5 10.5 3.5 3.5 7.5-8" />,
  machine: (
    <path d="M2.5 12.5V8h7l2.5-3.5h3.5v8M6 12.5h6M4.2 15.5a1.9 1.9 0 1 0 0-3.8 1.9 1.9 0 0 0 0 3.8ZM14.4 15.5a1.9 1.9 0 1 0 0-3.8 1.9 1.9 0 0 0 0 3.8Z" />
  ),
  packs: <path d="M3 6.5h6v9H3zM11 6.5h6v9h-6zM4.8 6.5v-2M7.2 6.5v-2M12.8 6.5v-2M15.2 6.5v-2" />,
  run: <path d="M3.5 3.5v13h13M3.5 6c5 .6 8 1 9.5 2.5 1.2 1.2 1.5 3.5 1.8 6" />,
  charging: <path d="M11 3 5.5 11H10l-1 6 5.5-8H10z" />,
  wiring: <path d="M3 5h5a3 3 0 0 1 3 3v4a3 3 0 0 0 3 3h3M3 5h.01M17 15h.01" />,
  bench: <path d="M4 3.5h12v13H4zM6.5 6h7v3h-7zM7.5 13h.01M12.5 13h.01" />,
  sheet: <path d="M5 3.5h10v13H5zM7.5 7h5M7.5 10h5M7.5 13h3" />,
} as const satisfies Record<string, ReactNode>;

export type IconName = keyof typeof drawings;

export const Icon = ({ name }: { readonly name: IconName }) => (
  <svg
    className="icon"
    viewBox="0 0 20 20"
    width="20"
    height="20"
    fill="none"
    stroke="currentColor"
    strokeWidth="1.5"
    strokeLinecap="round"
    strokeLinejoin="round"
    aria-hidden="true"
    focusable="false"
  >
    {drawings[name]}
  </svg>
);
