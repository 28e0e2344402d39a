package baysheet.scan;

/** A point of a page, in millimetres, or of a picture, in pixels; from the top left corner. */
record Point(double x, double y) {
  double distance(Point other) {
    return Math.hypot(x - other.x, y - other.y);
  }
}
