"""One margin with its derivation."""
