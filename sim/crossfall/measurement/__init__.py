"""What was measured on the real truck, and the truck file it makes."""
