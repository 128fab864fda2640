"""The set-up sheet: one A4 page with drawings, weights, tips, what was changed, and a card."""
