package baysheet.scan;

/**
 * A page set straight beside the sheet that was issued.
 *
 * @param twoTone whether the scan was black and white, so that stains are as dark as ink
 */
record Scanned(Grey page, Ink ink, BlankPage blank, boolean twoTone) {
  /** The paper's brightness: four fifths of what is around a box is darker or as dark. */
  int white(BlankPage.Area region) {
    int[] shades = new int[256];
    int count = 0;
    for (int y = region.top(); y < region.bottom(); y += 2) {
      for (int x = region.left(); x < region.right(); x += 2) {
        shades[page.at(x, y)]++;
        count++;
      }
    }
    int shade = 0;
    for (int seen = shades[0]; seen < count * 4 / 5; seen += shades[shade]) {
      shade++;
    }
    return shade;
  }
}
