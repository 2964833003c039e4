"""Everyday lines: drawn with the imperfections of real parts and analysers, by physics that the core does not share.

Nothing here imports the core: cables are distributed conductors and dielectrics in many pieces, two-ports are
scattering matrices, every joint is drawn on its own. Only the catalogue's published figures are read, as data.
"""
