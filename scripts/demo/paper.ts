/** A sheet of drawing paper with a border, a note that it is made for the demo, and what is drawn on it, as SVG. */
export function paper(width: number, height: number, drawn: string): string {
  const lines: string[] = [];
  for (let x = 40; x < width - 20; x += 40) lines.push(`M${x} 20V${height - 20}`);
  for (let y = 40; y < height - 20; y += 40) lines.push(`M20 ${y}H${width - 20}`);
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}">
<style>
text{font-family:'DejaVu Serif',serif;fill:#2f2a26}
.title{font-size:34px}.label{font-size:22px}.small{font-size:20px}.note{font-size:17px;font-style:italic;fill:#6b6258}
.edge{stroke:#2f2a26;stroke-width:2.2;fill:none}.rib{stroke:#2f2a26;stroke-width:.8;opacity:.55}
.body{stroke:#2f2a26;stroke-width:7;stroke-linecap:round}.motor{stroke:#a4502c;stroke-width:3.2;stroke-linecap:round}
.blade{stroke:#2f2a26;stroke-width:5;stroke-linecap:round}.hub{fill:#2f2a26}.thin{stroke:#2f2a26;stroke-width:1.4;fill:none}
.wood{fill:#dcc59a;stroke:#2f2a26;stroke-width:2.2;stroke-linejoin:round}.metal{fill:#c9ccd0;stroke:#2f2a26;stroke-width:2}
</style>
<rect width="${width}" height="${height}" fill="#f8f3e7"/>
<path d="${lines.join('')}" stroke="#d9cfba" stroke-width=".7" fill="none"/>
<rect x="20" y="20" width="${width - 40}" height="${height - 40}" class="thin"/>
${drawn}
<text x="${width - 44}" y="${height - 40}" text-anchor="end" class="note">drawn for the demo; model, club and people are invented</text>
</svg>`;
}

/** Text that can stand inside SVG. */
export function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
}
