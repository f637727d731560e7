/** A story of Tarn Quay, long enough to count as a page's main text. */
export const STORY = `<h1>The Marigold comes home</h1>${[
  'The ferry came in at dawn, and Bram sat on a rock to see it. The fog was thin and the sea was flat.',
  'Ines ran down from the school with a red bag. She had six fish for Wilma and a net that Otto had lost.',
  'Mr. Falk rang the bell on the quay. It was a big bell, and all the gulls got up and went round the lamp.',
  'At last the Marigold hit the soft ropes at the end of the quay, and the men on the deck let down the plank.',
  'Otto went on to the deck with a mop and a tin of wax. He had to rub the rail until it shone like glass.',
  'Then the sun was up, and the shop at the fish market put out its flags, and the day at Tarn Quay began.',
]
  .map((text) => `<p>${text}</p>`)
  .join('')}`;

/**
 * Returns a transparent text layer, as readers of scanned pages put it over a picture. The text is in runs of three
 * letters, each placed over its letters in the picture.
 */
export function textLayer(style = 'color: transparent'): string {
  return `<div id="layer" style="position: absolute; inset: 0; font: 20px monospace; ${style}"></div><script>
    const lines = ['The ferry came in at dawn and the', 'gulls went round the lamp on the quay', 'until Wilma rang the harbour bell'];
    const measure = document.createElement('canvas').getContext('2d');
    measure.font = '20px monospace';
    const wide = measure.measureText('m').width;
    lines.forEach((line, row) => {
      for (const { index, 0: word } of line.matchAll(/\\S+/g))
        for (let at = 0; at < word.length; at += 3) {
          const run = document.createElement('span');
          run.textContent = word.slice(at, at + 3);
          run.style.cssText = 'position: absolute; top: ' + (20 + row * 30) + 'px; left: ' + (20 + (index + at) * wide) + 'px';
          layer.append(run, ' ');
        }
    });
  </script>`;
}

/** An SVG slide with lines of text. Each line is a separate element, as exporters write it. */
export const SLIDE = `<svg viewBox="0 0 800 450" width="800" height="450"><title>no title</title><rect width="800" height="450" fill="#123"/>
  <g font-size="32" fill="#fff"><text x="40" y="80">The ferry came in at dawn</text><text x="40" y="140"><tspan x="40">and all the gulls went round</tspan><tspan x="40" dy="50">the lamp on the quay</tspan></text></g></svg>`;

/** A chart, whose labels do not count as text to read. */
export const CHART = `<svg viewBox="0 0 800 450" width="800" height="450"><text x="10" y="20">Ships</text><text x="10" y="80">Ferries 12</text><text x="10" y="120">Trawlers 30</text><text x="10" y="160">Tugs 4</text></svg>`;

/** One line of text as a PDF file (ISO 32000-1), without compression. */
export const PDF = `%PDF-1.4
1 0 obj <</Type/Catalog/Pages 2 0 R>> endobj
2 0 obj <</Type/Pages/Kids[3 0 R]/Count 1>> endobj
3 0 obj <</Type/Page/Parent 2 0 R/MediaBox[0 0 300 200]/Contents 4 0 R/Resources<</Font<</F 5 0 R>>>>>> endobj
4 0 obj <</Length 44>> stream
BT /F 14 Tf 20 100 Td (The ferry came in) Tj ET
endstream endobj
5 0 obj <</Type/Font/Subtype/Type1/BaseFont/Helvetica>> endobj
trailer <</Root 1 0 R>>
%%EOF`;
