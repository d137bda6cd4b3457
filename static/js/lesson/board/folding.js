// Where each count stands: from the places in board.json. A board that goes on past the planned end grows by lines.

export class Fold {
  constructor(count) {
    this.count = count;
  }

  // The rows and columns needed to show the counts up to `upto`: [[n or null, ...], ...] from the top left.
  page(upto) {
    const { places, terms, rows, columns } = this.count;
    const shown = places.slice(0, Math.max(upto, terms));
    const top = Math.min(...shown.map(([row]) => row));
    const height = Math.max(rows, ...shown.map(([row]) => row - top + 1));
    const width = Math.max(columns, ...shown.map(([, column]) => column));
    const page = Array.from({ length: height }, () => Array(width).fill(null));
    shown.forEach(([row, column], index) => { page[row - top][column - 1] = index + 1; });
    return page;
  }

  // The counts of the line in which n stands, in counting order.
  lineOf(n) {
    const across = this.count.fill !== "down";
    const line = ([row, column]) => (across ? row : column);
    const own = line(this.count.places[n - 1]);
    const found = [];
    this.count.places.forEach((place, index) => { if (line(place) === own) found.push(index + 1); });
    return found;
  }

  text(n) {
    return this.count.texts[n - 1];
  }

  // Which crate or ticket of a story a count belongs to; empty without a story.
  group(n) {
    return this.count.groups?.[n - 1] ?? "";
  }

  // The computed label of a jump between two counts; empty where the count has none.
  jump(from, to) {
    return this.count.jumps[String(to - from)] ?? "";
  }
}
