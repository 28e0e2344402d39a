package baysheet.template;

/** Line and column in a layout with its blocks before it, counted from 1. */
record Position(int line, int column) {}
