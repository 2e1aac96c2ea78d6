/** How a public function is called with what is right, before something in it is made wrong. */
export interface Recipe {
  /** Right arguments, made anew for each call. */
  readonly args: () => readonly unknown[];
  /** The call, where it is more than the function with the arguments. */
  readonly call?: (...args: never[]) => unknown;
  /** How often it is tried, beside the others; 1 when left out. Slow ones are tried less. */
  readonly weight?: number;
  /** Why ±Infinity may stand in its result: the documented meaning. */
  readonly infinite?: string;
  /** Why an unknown field may stand in its arguments. */
  readonly unknown?: string;
  /** Why an unknown field may stand in its arguments, and a refusal may have any path. */
  readonly open?: string;
}

export type Recipes = Readonly<Record<string, Recipe>>;
