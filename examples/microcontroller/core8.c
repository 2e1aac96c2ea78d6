/* A common 8-bit core at 16 MHz: signal on converter input 0, supply on input 1, serial line on the transmit pin of
   port 0. Register names are those of the C library's device header. */
#include "controller.h"
#include "ring.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <stdbool.h>
#include <util/atomic.h>

enum {
  timer_ticks_per_us = 2,
  /* The reference is the controller's own supply, so that signal and supply have the same error of it. */
  read_signal = _BV(REFS0),
  read_supply = _BV(REFS0) | _BV(MUX0),
  /* The converter's clock is 16 MHz / 128 = 125 kHz: all ten bits hold up to 200 kHz. */
  converter_clock = _BV(ADPS2) | _BV(ADPS1) | _BV(ADPS0),
};

static volatile struct pair latest;
static volatile bool is_new;
static uint16_t signal;
static uint32_t next_stamp = FIRST_STAMP;

static void start_converter(void) {
  DIDR0 = _BV(ADC0D) | _BV(ADC1D);
  ADMUX = read_signal;
  /* The first conversion takes longer than all that follow; it is thrown away. */
  ADCSRA = _BV(ADEN) | _BV(ADSC) | converter_clock;
  while (ADCSRA & _BV(ADSC)) {
  }
  /* From now on the timer's compare match starts each conversion, without any instruction between. The input is held
     2 converter clocks later, 16 us; as this never changes, it is no part of the time between two stamps. */
  ADCSRB = _BV(ADTS2) | _BV(ADTS0);
  ADCSRA = _BV(ADEN) | _BV(ADATE) | _BV(ADIF) | _BV(ADIE) | converter_clock;
}

static void start_timer(void) {
  OCR1A = us_per_conversion * timer_ticks_per_us - 1;
  OCR1B = OCR1A / 2;
  TCCR1A = 0;
  TCNT1 = 0;
  /* A flag that a loader left could not rise. */
  TIFR1 = _BV(OCF1B);
  TCCR1B = _BV(WGM12) | _BV(CS11);
}

static void start_serial(void) {
  UBRR0 = F_CPU / 16 / BAUD - 1;
  UCSR0A = 0;
  UCSR0C = _BV(UCSZ01) | _BV(UCSZ00);
  UCSR0B = _BV(TXEN0);
}

void start_controller(void) {
  start_serial();
  start_converter();
  start_timer();
  sei();
}

/* 500 us pass between two of these, and nothing else holds interrupts off for 20 us, so that none is ever missed: the time
   of a sample follows from the count of samples before it. */
ISR(ADC_vect) {
  /* The trigger is the flag's rise: it must have fallen before the next match. */
  TIFR1 = _BV(OCF1B);
  uint16_t counts = ADC;
  /* The input is switched at once, so that it has settled when it is held. */
  if (ADMUX == read_signal) {
    ADMUX = read_supply;
    signal = counts;
    return;
  }
  ADMUX = read_signal;
  latest.stamp = next_stamp;
  latest.signal = signal;
  latest.supply = counts;
  is_new = true;
  next_stamp += us_per_pair;
}

ISR(USART_UDRE_vect) {
  uint8_t byte;
  if (ring_take(&byte))
    UDR0 = byte;
  else
    UCSR0B &= (uint8_t)~_BV(UDRIE0);
}

void wait_for_pair(struct pair *pair) {
  /* No sleep: entering it would start a conversion that nobody asked for. */
  while (!is_new) {
  }
  ATOMIC_BLOCK(ATOMIC_FORCEON) {
    pair->stamp = latest.stamp;
    pair->signal = latest.signal;
    pair->supply = latest.supply;
    is_new = false;
  }
}

void send_ring(void) {
  /* The interrupt clears the same bit: in between it would be lost. */
  ATOMIC_BLOCK(ATOMIC_FORCEON) { UCSR0B |= _BV(UDRIE0); }
}
