#ifndef CONTROLLER_H
#define CONTROLLER_H

#include "line.h"

/* What each core does in its own way: core8.c and core32.c. */

/* Stamp of the first pair, us. The tests begin shortly before the wrap. */
#ifndef FIRST_STAMP
#define FIRST_STAMP 0
#endif

#ifndef BAUD
#define BAUD 500000
#endif

enum { pairs_per_second = 1000, us_per_pair = 1000, us_per_conversion = 500 };

/* Starts converter, timer and serial line. */
void start_controller(void);

/* Waits for the next pair. One that is not fetched within its millisecond is lost as a whole. */
void wait_for_pair(struct pair *pair);

/* Lets the interrupt send what the ring holds. */
void send_ring(void);

#endif
