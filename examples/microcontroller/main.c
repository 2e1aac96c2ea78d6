/* Signal and supply of a potentiometer, 1000 pairs a second, as lines of text on a serial line. */
#include "controller.h"
#include "line.h"
#include "ring.h"

int main(void) {
  static char line[longest_line];
  uint16_t pairs_to_heading = 0;

  start_controller();
  for (;;) {
    struct pair pair;
    wait_for_pair(&pair);
    /* Who begins to listen later knows within a second what the columns are. */
    if (pairs_to_heading == 0) {
      pairs_to_heading = pairs_per_second;
      ring_put(line, write_heading(line));
    }
    pairs_to_heading--;
    ring_put(line, write_pair(line, &pair));
    send_ring();
  }
}
