import type { ComponentChildren } from 'preact';
import type { Written } from '../workings/written.js';

/** A slider of a lesson; it stands at whole places, from 0 up. */
export interface LessonSlider {
  /** Names it on its page. */
  readonly name: string;
  readonly label: string;
  /** The last place. */
  readonly most: number;
  /** Where it stands first. */
  readonly first: number;
}

/** Where the sliders stand, in their order. */
export type Places = readonly number[];

/** What a lesson shows with its sliders somewhere. */
export interface LessonShown {
  /** What each slider stands for, with its unit. */
  readonly values: readonly string[];
  readonly drawing: ComponentChildren;
  readonly says: readonly string[];
}

/** What is worked out of the sliders' places by code that is fetched when they are moved. */
export interface LessonSteps {
  /** Sentences that need that code. */
  readonly says?: readonly string[];
  readonly workings: readonly Written[];
}

/** A lesson's figure with its sliders. */
export interface LessonFigure {
  /** Names it on its page; the last part of the page's address. */
  readonly id: string;
  readonly sliders: readonly LessonSlider[];
  readonly shown: (places: Places) => LessonShown;
  readonly steps: () => Promise<{ readonly stepsOf: (places: Places) => LessonSteps }>;
}

/** Where the sliders stand first. */
export const firstPlaces = (sliders: readonly LessonSlider[]): Places =>
  sliders.map(({ first }) => first);
