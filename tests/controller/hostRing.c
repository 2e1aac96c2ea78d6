/* Puts lines of the lengths that it reads into the ring and takes as many bytes out as follow: "length taken" each.
   Prints + or - for a line that went in or not, and the bytes that came out. */
#include <stdio.h>

#include "ring.h"

int main(void) {
  unsigned length, bytes;
  for (unsigned line = 0; scanf("%u %u", &length, &bytes) == 2; line++) {
    char text[256];
    for (unsigned i = 0; i < length; i++) text[i] = (char)('a' + line % 26);
    putchar(ring_put(text, (uint8_t)length) ? '+' : '-');
    for (uint8_t byte; bytes > 0 && ring_take(&byte); bytes--) putchar(byte);
  }
  return 0;
}
