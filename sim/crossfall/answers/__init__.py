"""What a truck does on the tilted table: the one answer that every verb, page and sweep reads."""
