#ifndef RING_H
#define RING_H

#include <stdbool.h>
#include <stdint.h>

/* Puts a whole line in, or nothing: half a line would be worth less than none. Called by the main program only. */
bool ring_put(const char *line, uint8_t length);

/* Takes the oldest byte out, if there is one. Called by the interrupt only. */
bool ring_take(uint8_t *byte);

#endif
