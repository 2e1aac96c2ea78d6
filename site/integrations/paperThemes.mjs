/**
 * Code as it is printed: black, but for comments and texts. Each further colour would be a further mark around each word, and a page of
 * code three times as large.
 */
export const paperThemes = [
  paperTheme('dark', { paper: '#17181c', ink: '#ffffff', comment: '#c0c2c7', text: '#ffd9bd' }),
  paperTheme('light', { paper: '#ffffff', ink: '#111111', comment: '#4a4a4a', text: '#5c2100' }),
];

/** Takes the marks off words in the colour that the whole block has anyway. */
export const plainInk = {
  name: 'plain ink',
  hooks: {
    postprocessAnalyzedCode({ codeBlock, styleVariants }) {
      const inks = styleVariants.map(({ theme }) => theme.fg.toLowerCase());
      for (const line of codeBlock.getLines())
        for (const mark of [...line.getAnnotations()])
          if (mark.color?.toLowerCase() === inks[mark.styleVariantIndex])
            line.deleteAnnotation(mark);
    },
  },
};

function paperTheme(type, { paper, ink, comment, text }) {
  return {
    name: `paper-${type}`,
    type,
    colors: { 'editor.background': paper, 'editor.foreground': ink },
    tokenColors: [
      { scope: ['comment'], settings: { foreground: comment, fontStyle: 'italic' } },
      { scope: ['string'], settings: { foreground: text } },
    ],
  };
}
