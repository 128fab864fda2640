"""The bench in the browser: a local page for looking and dragging."""
