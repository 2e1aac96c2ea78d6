/** How wide a lesson draws a recording, px: as a phone has room for. */
export const traceWidth = 360;
