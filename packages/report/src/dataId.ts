/** The element of a report that holds its data. */
export const dataId = 'truesweep-report';
