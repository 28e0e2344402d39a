package baysheet.scan;

/**
 * A page set straight beside the sheet that was issued.
 *
 * @param twoTone whether the scan was black and white, so that stains are as dark as ink
 */
record Scanned(Grey page, Ink ink, BlankPage blank, boolean twoTone) {}
