/** So many of the latest samples of a running recording are judged at least; its memory stays flat however long it runs. */
export const mostKept = 2 ** 20;
