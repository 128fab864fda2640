// A list with fields in its rows as one tab stop.

/** Up and down go through the rows, left and right through a row, as long as nothing is being
 * typed. rows: what a row is called. stop: the field that Tab comes back to, kept by its data-key
 * while the list is drawn anew. */
export function oneStopGrid(grid: HTMLElement, rows: string, stop: { key: string }): void {
  const fields = "input, select, button";
  const cells = (row: Element): HTMLElement[] => [...row.querySelectorAll<HTMLElement>(fields)];
  const enter = (cell: HTMLElement | undefined): void => {
    if (!cell) return;
    cell.focus();
    if (cell instanceof HTMLInputElement) cell.select();
  };
  const settle = (cell: Element): void => {
    for (const e of grid.querySelectorAll<HTMLElement>("[tabindex='0']")) e.tabIndex = -1;
    (cell as HTMLElement).tabIndex = 0;
  };
  for (const cell of cells(grid)) cell.tabIndex = -1;
  const first = grid.querySelector(stop.key ? `[data-key="${CSS.escape(stop.key)}"]` : "input") ?? grid.querySelector(fields);
  if (first) settle(first);
  grid.addEventListener("focusin", (e) => {
    settle(e.target as Element);
    stop.key = (e.target as Element).getAttribute("data-key") ?? "";
  });
  grid.addEventListener("input", (e) => (e.target as HTMLElement).toggleAttribute("data-typing", true));
  for (const end of ["change", "focusout"]) grid.addEventListener(end, (e) => (e.target as HTMLElement).removeAttribute("data-typing"));
  grid.addEventListener("keydown", (e) => {
    const cell = e.target as HTMLElement;
    const row = cell.closest(rows)!;
    const column = cells(row).indexOf(cell);
    if (e.altKey || e.ctrlKey || e.metaKey) return;
    const sideways = e.key === "ArrowLeft" ? -1 : e.key === "ArrowRight" ? 1 : 0;
    const down = e.key === "ArrowUp" ? -1 : e.key === "ArrowDown" ? 1 : 0;
    if (down) {
      e.preventDefault();
      const to = down > 0 ? row.nextElementSibling : row.previousElementSibling;
      if (to) enter(cells(to)[Math.min(column, cells(to).length - 1)]);
    } else if (sideways && !cell.hasAttribute("data-typing")) {
      e.preventDefault();
      enter(cells(row)[column + sideways]);
    }
  });
}
