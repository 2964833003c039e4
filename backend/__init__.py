"""The Flask app and the command line of Jointwise: two doors to `jointwise.calc.operations`."""
