/* A common 32-bit core with an 8 MHz crystal: signal on pin A0, supply on pin A1, serial line on pin A9. No library and
   no header of the controller: its registers by address, from memory. Look each up in the reference manual of yours. */
#include "controller.h"
#include "ring.h"

#include <stdbool.h>

#define REGISTER(address) (*(volatile uint32_t *)(address))

/* Interrupt controller of the core. */
#define ENABLE_INTERRUPTS_0 REGISTER(0xE000E100)
#define ENABLE_INTERRUPTS_32 REGISTER(0xE000E104)

/* Clocks. */
#define CLOCK_CONTROL REGISTER(0x40021000)
#define CLOCK_CONFIGURATION REGISTER(0x40021004)
#define CLOCKS_OF_BUS_2 REGISTER(0x40021018)
#define CLOCKS_OF_BUS_1 REGISTER(0x4002101C)

/* Pins A0 to A7 and A8 to A15, four bits each. */
#define PINS_LOW REGISTER(0x40010800)
#define PINS_HIGH REGISTER(0x40010804)

/* Timer 3. */
#define TIMER_CONTROL REGISTER(0x40000400)
#define TIMER_MASTER REGISTER(0x40000404)
#define TIMER_EVENT REGISTER(0x40000414)
#define TIMER_PRESCALER REGISTER(0x40000428)
#define TIMER_TOP REGISTER(0x4000042C)

/* Converter 1. */
#define CONVERTER_INTERRUPTS REGISTER(0x40012404)
#define CONVERTER_CONTROL REGISTER(0x40012408)
#define CONVERTER_SAMPLE_TIMES REGISTER(0x40012410)
#define CONVERTER_INPUT REGISTER(0x40012434)
#define CONVERTER_RESULT REGISTER(0x4001244C)

/* Serial port 1. */
#define SERIAL_STATUS REGISTER(0x40013800)
#define SERIAL_DATA REGISTER(0x40013804)
#define SERIAL_DIVIDER REGISTER(0x40013808)
#define SERIAL_CONTROL REGISTER(0x4001380C)

enum {
  clock_hz = 8000000,
  /* Places in the vector table behind the core's own sixteen. */
  converter_interrupt = 18,
  serial_interrupt = 37,

  crystal_on = 1 << 16,
  crystal_ready = 1 << 17,
  run_on_crystal = 1,
  running_on_crystal = 1 << 2,

  pins_a_clock = 1 << 2,
  converter_clock = 1 << 9,
  serial_clock = 1 << 14,
  timer_clock = 1 << 1,

  timer_runs = 1,
  timer_load = 1,
  trigger_on_update = 2 << 4,

  converter_on = 1,
  converter_calibrate = 1 << 2,
  converter_reset_calibration = 1 << 3,
  trigger_by_timer_3 = 4 << 17 | 1 << 20,
  interrupt_at_end = 1 << 5,
  signal_input = 0,
  supply_input = 1,

  serial_on = 1 << 13,
  serial_transmits = 1 << 3,
  interrupt_when_empty = 1 << 7,
  serial_empty = 1 << 7,
};

static volatile struct pair latest;
static volatile bool is_new;
static uint16_t signal;
static uint32_t next_stamp = FIRST_STAMP;

static void start_clocks(void) {
  /* The controller's own oscillator errs by a percent, and every stamp with it; the crystal by less than 0.01 %. */
  CLOCK_CONTROL |= crystal_on;
  while (!(CLOCK_CONTROL & crystal_ready)) {
  }
  CLOCK_CONFIGURATION = run_on_crystal;
  while (!(CLOCK_CONFIGURATION & running_on_crystal)) {
  }
  CLOCKS_OF_BUS_2 |= pins_a_clock | converter_clock | serial_clock;
  CLOCKS_OF_BUS_1 |= timer_clock;
}

static void start_pins(void) {
  /* A0 and A1 analogue; A9 driven by the serial port. */
  PINS_LOW &= 0xFFFFFF00;
  PINS_HIGH = (PINS_HIGH & 0xFFFFFF0F) | 0xB0;
}

static void start_converter(void) {
  /* The longest sample time, 239.5 of the converter's clocks of 0.25 us, lets 10 kOhm charge the input. The input is held
     at its end, 60 us after the trigger; as this never changes, it is no part of the time between two stamps. */
  CONVERTER_SAMPLE_TIMES = 7 << (3 * signal_input) | 7 << (3 * supply_input);
  CONVERTER_INPUT = signal_input;
  CONVERTER_CONTROL = converter_on;
  for (volatile uint8_t wait = 0; wait < 100; wait++) {
  }
  CONVERTER_CONTROL |= converter_reset_calibration;
  while (CONVERTER_CONTROL & converter_reset_calibration) {
  }
  CONVERTER_CONTROL |= converter_calibrate;
  while (CONVERTER_CONTROL & converter_calibrate) {
  }
  CONVERTER_INTERRUPTS = interrupt_at_end;
  /* The other bits must stay as they are: writing this one alone would start a conversion. */
  CONVERTER_CONTROL |= trigger_by_timer_3;
  ENABLE_INTERRUPTS_0 = 1u << converter_interrupt;
}

static void start_timer(void) {
  TIMER_PRESCALER = clock_hz / 1000000 - 1;
  TIMER_TOP = us_per_conversion - 1;
  TIMER_EVENT = timer_load;
  TIMER_MASTER = trigger_on_update;
  TIMER_CONTROL = timer_runs;
}

static void start_serial(void) {
  SERIAL_DIVIDER = clock_hz / BAUD;
  SERIAL_CONTROL = serial_on | serial_transmits;
  ENABLE_INTERRUPTS_32 = 1u << (serial_interrupt - 32);
}

void start_controller(void) {
  start_clocks();
  start_pins();
  start_serial();
  start_converter();
  start_timer();
}

/* 500 us pass between two of these, so that none is ever missed: the time of a sample follows from the count of samples
   before it. */
static void on_converted(void) {
  uint16_t counts = (uint16_t)CONVERTER_RESULT;
  if (CONVERTER_INPUT == signal_input) {
    CONVERTER_INPUT = supply_input;
    signal = counts;
    return;
  }
  CONVERTER_INPUT = signal_input;
  latest.stamp = next_stamp;
  latest.signal = signal;
  latest.supply = counts;
  is_new = true;
  next_stamp += us_per_pair;
}

static void on_serial(void) {
  uint8_t byte;
  if (!(SERIAL_STATUS & serial_empty)) return;
  if (ring_take(&byte))
    SERIAL_DATA = byte;
  else
    SERIAL_CONTROL = serial_on | serial_transmits;
}

void wait_for_pair(struct pair *pair) {
  for (;;) {
    /* Held off between look and sleep: the sleep ends at an interrupt that waits, which is served once it may. */
    __asm volatile("cpsid i" ::: "memory");
    if (is_new) break;
    __asm volatile("wfi\n\tcpsie i" ::: "memory");
  }
  pair->stamp = latest.stamp;
  pair->signal = latest.signal;
  pair->supply = latest.supply;
  is_new = false;
  __asm volatile("cpsie i" ::: "memory");
}

void send_ring(void) { SERIAL_CONTROL = serial_on | serial_transmits | interrupt_when_empty; }

/* Start: what a C library would do. */

int main(void);

/* From core32.ld. */
extern uint32_t data_in_flash[], data_begin[], data_end[], zeros_begin[], zeros_end[], stack_top[];

static void on_reset(void) {
  const uint32_t *from = data_in_flash;
  for (uint32_t *to = data_begin; to < data_end; to++) *to = *from++;
  for (uint32_t *to = zeros_begin; to < zeros_end; to++) *to = 0;
  main();
}

static void on_fault(void) {
  for (;;) {
  }
}

typedef void (*handler)(void);

__attribute__((section(".vectors"), used)) static const handler vectors[] = {
    [0] = (handler)stack_top,
    [1] = on_reset,
    [2 ... 6] = on_fault,
    [16 + converter_interrupt] = on_converted,
    [16 + serial_interrupt] = on_serial,
};
