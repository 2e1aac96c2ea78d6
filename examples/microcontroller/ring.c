/* Bytes on their way to the serial line. */
#include "ring.h"

/* A heading and three lines of pairs; a power of two, so that the counters may wrap. */
enum { ring_size = 128 };

static volatile uint8_t ring[ring_size];

/* Bytes ever put and ever taken, modulo 256. Each is written from one side alone and read in one instruction, so that
   neither side has to hold the other up. */
static volatile uint8_t put;
static volatile uint8_t taken;

bool ring_put(const char *line, uint8_t length) {
  uint8_t at = put;
  if (length > ring_size - (uint8_t)(at - taken)) return false;
  for (uint8_t i = 0; i < length; i++) ring[at++ % ring_size] = (uint8_t)line[i];
  /* Only now: the interrupt must not find a line that is not whole. */
  put = at;
  return true;
}

bool ring_take(uint8_t *byte) {
  uint8_t at = taken;
  if (at == put) return false;
  *byte = ring[at % ring_size];
  taken = (uint8_t)(at + 1);
  return true;
}
