"""What a pattern looks like: charts, schematics and the cloth, drawn from the model."""
