"""Densities of common materials, with where each number comes from.

Source: `source` of each row of the table.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Material:
    """density: kg/m^3. source: where it is from."""

    name: str
    density: float
    source: str


_MEMORY = "handbook value, from memory"
_TABLE = (
    ("aluminium", 2700.0, "alloy 6061, mill data sheets"),
    ("aluminium 7075", 2810.0, "alloy 7075, mill data sheets"),
    ("brass", 8500.0, "alloy C36000, copper industry data sheets"),
    ("brass sheet", 8530.0, "alloy C26000, copper industry data sheets"),
    ("steel", 7800.0, "plain carbon steel, common handbook value"),
    ("stainless steel", 8000.0, "304/316, Callister, Materials Science and Engineering"),
    ("lead", 11300.0, "OpenStax, College Physics, table of densities"),
    ("tungsten", 19300.0, _MEMORY),
    ("titanium", 4430.0, "alloy Ti-6Al-4V, " + _MEMORY),
    ("copper", 8960.0, _MEMORY),
    ("acetal", 1410.0, "Engineering Plastics Handbook, table 5.5"),
    ("nylon", 1140.0, "nylon 6/6, Engineering Plastics Handbook"),
    ("nylon glass-filled", 1370.0, "nylon 6/6 with 30 % glass, " + _MEMORY),
    ("polycarbonate", 1190.0, "Engineering Plastics Handbook"),
    ("abs", 1050.0, _MEMORY),
    ("pla", 1240.0, _MEMORY),
    ("petg", 1270.0, _MEMORY),
    ("rubber", 1150.0, "filled tyre rubber, " + _MEMORY),
    ("open foam", 30.0, "soft tyre foam, " + _MEMORY),
    ("closed foam", 120.0, "firm tyre foam, " + _MEMORY),
    ("carbon plate", 1550.0, "carbon-fibre laminate, " + _MEMORY),
    ("glass plate", 1850.0, "glass-fibre laminate, " + _MEMORY),
    ("plywood", 650.0, "birch plywood, " + _MEMORY),
    ("wood", 500.0, "softwood, " + _MEMORY),
    ("acrylic", 1190.0, _MEMORY),
    ("water", 1000.0, "by definition of the old litre, near enough"),
)

MATERIALS: dict[str, Material] = {row[0]: Material(*row) for row in _TABLE}
