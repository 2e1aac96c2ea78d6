import { firstPlaces, type LessonSlider, type LessonSteps, type Places } from './lesson.js';
import { Steps } from './Steps.js';

/** The steps for where the sliders stand first, written while the site is built. */
export function FirstSteps(props: {
  readonly sliders: readonly LessonSlider[];
  readonly stepsOf: (places: Places) => LessonSteps;
}) {
  return <Steps {...props.stepsOf(firstPlaces(props.sliders))} />;
}
