"""Facts of the trade: tables with a source in every row, and the modules that read them."""
