#ifndef LINE_H
#define LINE_H

#include <stdint.h>

/* One reading of the signal, with the reading of the supply that follows it by half a pair's time. */
struct pair {
  uint32_t stamp; /* us, of the signal's sample; wraps after 2^32 us */
  uint16_t signal; /* counts of the converter */
  uint16_t supply; /* counts of the converter */
};

/* Bytes of the longest line, which is the heading, with its '\n'. */
enum { longest_line = 47 };

/* CRC-16/XMODEM of one byte more: polynomial 0x1021, not reflected, begun with 0. */
uint16_t crc_with(uint16_t crc, uint8_t byte);

/* Write a line with its check and '\n', without an end of string, and return its length. */
uint8_t write_heading(char *line);
uint8_t write_pair(char *line, const struct pair *pair);

#endif
