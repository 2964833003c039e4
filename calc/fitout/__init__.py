"""How to fit, seal and look after the joints of a line: sheets, a list of what to buy, and labels."""
