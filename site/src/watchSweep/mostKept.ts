/** So many of the latest samples of a running recording are judged at least, all together; its memory stays flat however long it runs. */
export const mostKept = 2 ** 20;

/** So many are kept where only the latest seconds are judged: more of them are never looked at. */
export const mostRecent = 2 ** 19;
