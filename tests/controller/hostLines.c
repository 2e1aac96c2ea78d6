/* Writes each pair of numbers that it reads as the controllers do, and the check of a text: hostLines [text] */
#include <stdio.h>

#include "line.h"

int main(int count, char **words) {
  char line[longest_line];
  if (count > 1) {
    uint16_t crc = 0;
    for (const char *each = words[1]; *each; each++) crc = crc_with(crc, (uint8_t)*each);
    printf("%04X\n", crc);
    return 0;
  }
  fwrite(line, 1, write_heading(line), stdout);
  unsigned stamp, signal, supply;
  while (scanf("%u %u %u", &stamp, &signal, &supply) == 3) {
    struct pair pair = {stamp, (uint16_t)signal, (uint16_t)supply};
    fwrite(line, 1, write_pair(line, &pair), stdout);
  }
  return 0;
}
