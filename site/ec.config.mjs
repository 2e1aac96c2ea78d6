import { paperThemes, plainInk } from './integrations/paperThemes.mjs';

/** How blocks of code are set; by itself, because its plugin is a function. */
export default {
  // Long lines wrap: on a phone nothing has to be pushed aside.
  defaultProps: { wrap: true },
  plugins: [plainInk],
  themes: paperThemes,
  useStarlightUiThemeColors: true,
};
