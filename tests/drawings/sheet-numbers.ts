/** Every point of a drawing's paths, circles and texts; relative parts of paths are followed. */
export function pointsOf(svg: string): { x: number; y: number }[] {
  const points: { x: number; y: number }[] = [];
  for (const [, data = ''] of svg.matchAll(/ d="([^"]*)"/g)) {
    let x = 0;
    let y = 0;
    for (const [, command = '', rest = ''] of data.matchAll(/([A-Za-z])([^A-Za-z]*)/g)) {
      const numbers = [...rest.matchAll(/-?\d+(?:\.\d+)?/g)].map(([text]) => Number(text));
      const relative = command === command.toLowerCase();
      const move = (dx: number, dy: number) => {
        x = relative ? x + dx : dx;
        y = relative ? y + dy : dy;
        points.push({ x, y });
      };
      if (command.toLowerCase() === 'h') for (const number of numbers) move(number, relative ? 0 : y);
      else if (command.toLowerCase() === 'v') for (const number of numbers) move(relative ? 0 : x, number);
      else {
        const width = { q: 4, a: 7 }[command.toLowerCase()] ?? 2;
        for (let index = 0; index + width <= numbers.length; index += width)
          move(numbers[index + width - 2] ?? 0, numbers[index + width - 1] ?? 0);
      }
    }
  }
  for (const [, x, y] of svg.matchAll(/ c?x="([^"]*)" c?y="([^"]*)"/g))
    points.push({ x: Number(x), y: Number(y) });
  return points;
}

/** Width and height of the sheet. */
export function sizeOf(svg: string): { width: number; height: number } {
  const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? [];
  return { width: Number(width), height: Number(height) };
}

/** The data of the paths of one class. */
export function pathsOf(svg: string, className: string): string[] {
  return [...svg.matchAll(/<path class="([^"]*)" d="([^"]*)"/g)]
    .filter(([, name]) => name === className)
    .map(([, , data]) => data ?? '');
}
