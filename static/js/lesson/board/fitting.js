// How large the grid is drawn: as large as fits, digits never under what the back row reads; then fewer lines are shown
// and the board scrolls by lines. All lengths are of a picture 1920 px wide, as in a classroom, and are scaled to the screen.

const PICTURE = 1920;
const WISHED = 88, SMALLEST = 74; // font size: its digits are 0.723 of it, so 63 and 53 px
const SMALLEST_PX = 26; // on a phone, which nobody reads from the back row
const CELL = 262; // width wished for
const AIR = 0.5, TIGHT = 0.25, TIGHTEST = 0.12; // white beside the widest numeral, of the font size
const TALL = 1.77, LOW = 1.4, LOWEST = 1.2, STACKED = 2.3, STACKED_LOWEST = 2.05; // height of a row, of the font size

// room: {width, height} for the grid in px of the screen; screen: its width. widest: of all numerals at size 1.
export function fit({ room, screen, rows, columns, widest, stacked }) {
  const scale = screen / PICTURE;
  const smallest = Math.max(SMALLEST * scale, SMALLEST_PX);
  let font = Math.max(WISHED * scale, SMALLEST_PX);
  const low = stacked ? STACKED : LOW, lowest = stacked ? STACKED_LOWEST : LOWEST;
  const fits = (size) => columns * (widest + TIGHT) * size <= room.width && rows * low * size <= room.height;
  while (!fits(font) && font > smallest) font = Math.max(font - 1, smallest);
  // The last squeeze before columns would be out of view.
  const tight = columns * (widest + TIGHT) * font > room.width && columns * (widest + TIGHTEST) * font <= room.width ? TIGHTEST : TIGHT;
  let lineHeight = low;
  if (rows * low * font > room.height && rows * lowest * font <= room.height) lineHeight = room.height / rows / font;
  const width = clamp((widest + tight) * font, room.width / columns, Math.max(CELL * scale, (widest + AIR) * font));
  const shownRows = atLeastOne(Math.min(rows, Math.floor(room.height / (lineHeight * font) + 0.01)));
  const height = clamp(lineHeight * font, room.height / shownRows, (stacked ? STACKED : TALL) * font);
  const shownColumns = atLeastOne(Math.min(columns, Math.floor(room.width / width + 0.01)));
  return {
    font: round(font), width: Math.floor(shownColumns < columns ? room.width / shownColumns : width),
    height: Math.floor(height), rows: shownRows, columns: shownColumns,
  };
}

function clamp(least, wished, most) {
  return Math.max(least, Math.min(wished, most));
}

function atLeastOne(count) {
  return Math.max(1, count);
}

function round(size) {
  return Math.floor(size * 10) / 10;
}
