/* Runs the 8-bit program: emulator program.elf seconds supply-volts. Standard input brings the signal, V, as doubles every
   10 us from reset on; standard output gets what goes over the serial line. */
#include <stdio.h>
#include <stdlib.h>

#include <avr_adc.h>
#include <avr_timer.h>
#include <avr_uart.h>
#include <sim_avr.h>
#include <sim_elf.h>
#include <sim_irq.h>

enum {
  hertz = 16000000,
  cycles_per_point = 160,
  /* The converter holds its input 2 of its clocks of 128 cycles after the trigger. */
  cycles_to_hold = 256,
  timer_flags = 0x36,
  compare_match = 1 << 2,
  trigger_choice = 0x7B,
  trigger_bits = 7,
  by_compare_match = 5,
  controller_millivolts = 5000,
};

static avr_t *avr;
static avr_irq_t *inputs;
static double *signal_volts;
static size_t points;
static double supply_volts;

static double signal_at(avr_cycle_count_t cycle) {
  size_t before = cycle / cycles_per_point;
  double part = (double)(cycle % cycles_per_point) / cycles_per_point;
  if (before + 1 >= points) return signal_volts[points - 1];
  return signal_volts[before] * (1 - part) + signal_volts[before + 1] * part;
}

static void on_conversion(struct avr_irq_t *irq, uint32_t value, void *unused) {
  (void)irq, (void)unused;
  union {
    avr_adc_mux_t chosen;
    uint32_t value;
  } mux = {.value = value};
  double volts = mux.chosen.src == 0 ? signal_at(avr->cycle + cycles_to_hold)
                 : mux.chosen.src == 1 ? supply_volts
                                       : 0;
  double millivolts = volts * 1000 + 0.5;
  if (!(millivolts > 0)) millivolts = 0;
  if (millivolts > controller_millivolts) millivolts = controller_millivolts;
  avr_raise_irq(inputs + ADC_IRQ_ADC0 + mux.chosen.src, (uint32_t)millivolts);
}

static void on_byte(struct avr_irq_t *irq, uint32_t byte, void *unused) {
  (void)irq, (void)unused;
  putchar((int)byte);
}

/* The emulator warns that it does not start conversions by a timer, which is done here instead. */
static void say_nothing(struct avr_t *of, const int level, const char *format, va_list values) {
  (void)of;
  if (level <= LOG_ERROR) vfprintf(stderr, format, values);
}

static void read_signal(void) {
  size_t room = 1 << 16;
  signal_volts = malloc(room * sizeof *signal_volts);
  for (size_t got; (got = fread(signal_volts + points, sizeof *signal_volts, room - points, stdin));) {
    points += got;
    if (points == room) signal_volts = realloc(signal_volts, (room *= 2) * sizeof *signal_volts);
  }
}

int main(int count, char **words) {
  elf_firmware_t program = {0};
  avr_global_logger_set(say_nothing);
  if (count != 4 || elf_read_firmware(words[1], &program) != 0) return 2;
  supply_volts = atof(words[3]);
  read_signal();
  if (points == 0) return 2;

  avr = avr_make_mcu_by_name("atmega328p");
  if (!avr) return 2;
  avr_init(avr);
  avr->frequency = hertz;
  avr->vcc = avr->avcc = avr->aref = controller_millivolts;
  avr_load_firmware(avr, &program);

  inputs = avr_io_getirq(avr, AVR_IOCTL_ADC_GETIRQ, 0);
  avr_irq_register_notify(inputs + ADC_IRQ_OUT_TRIGGER, on_conversion, NULL);
  uint32_t no_flags = 0;
  avr_ioctl(avr, AVR_IOCTL_UART_SET_FLAGS('0'), &no_flags);
  avr_irq_register_notify(avr_io_getirq(avr, AVR_IOCTL_UART_GETIRQ('0'), UART_IRQ_OUTPUT), on_byte, NULL);

  avr_cycle_count_t end = (avr_cycle_count_t)(atof(words[2]) * hertz);
  int before = 0;
  while (avr->cycle < end) {
    int state = avr_run(avr);
    if (state == cpu_Done || state == cpu_Crashed) return 3;
    /* As in the controller: the flag's rise starts a conversion, a flag that stays does not. */
    int flag = avr->data[timer_flags] & compare_match;
    if (flag && !before && (avr->data[trigger_choice] & trigger_bits) == by_compare_match)
      avr_raise_irq(inputs + ADC_IRQ_IN_TRIGGER, 1);
    before = flag;
  }
  return 0;
}
