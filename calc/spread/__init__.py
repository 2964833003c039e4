"""How far unknown lengths and tolerances spread a line's answer."""
