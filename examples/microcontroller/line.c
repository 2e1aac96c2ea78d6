/* Lines and their check: no hardware, the same on every controller. */
#include "line.h"

#include <stdbool.h>

uint16_t crc_with(uint16_t crc, uint8_t byte) {
  /* A byte at once instead of bit by bit, and without a table. */
  crc = (uint16_t)(crc << 8 | crc >> 8);
  crc ^= byte;
  crc ^= (crc & 0xff) >> 4;
  crc ^= (uint16_t)(crc << 12);
  crc ^= (uint16_t)((crc & 0xff) << 5);
  return crc;
}

static char *put_number(char *at, uint32_t number) {
  /* Subtracting powers of ten: a division of 32 bits has no instruction on 8-bit cores. */
  static const uint32_t powers[] = {1000000000, 100000000, 10000000, 1000000, 100000,
                                    10000,      1000,      100,      10};
  bool has_begun = false;
  for (uint8_t i = 0; i < sizeof powers / sizeof *powers; i++) {
    char digit = '0';
    while (number >= powers[i]) {
      number -= powers[i];
      digit++;
    }
    if (digit != '0') has_begun = true;
    if (has_begun) *at++ = digit;
  }
  *at++ = (char)('0' + number);
  return at;
}

static char *put_check(char *at, const char *line) {
  uint16_t crc = 0;
  for (const char *each = line; each < at; each++) crc = crc_with(crc, (uint8_t)*each);
  *at++ = '*';
  for (uint8_t digit = 0; digit < 4; digit++) {
    *at++ = "0123456789ABCDEF"[crc >> 12];
    crc = (uint16_t)(crc << 4);
  }
  return at;
}

static uint8_t end_line(char *at, const char *line) {
  at = put_check(at, line);
  *at++ = '\n';
  return (uint8_t)(at - line);
}

uint8_t write_heading(char *line) {
  char *at = line;
  for (const char *each = "time (us),signal (counts),supply (counts)"; *each; each++) *at++ = *each;
  return end_line(at, line);
}

uint8_t write_pair(char *line, const struct pair *pair) {
  char *at = put_number(line, pair->stamp);
  *at++ = ',';
  at = put_number(at, pair->signal);
  *at++ = ',';
  at = put_number(at, pair->supply);
  return end_line(at, line);
}
