"""Margins of every interface family at every band and power level."""
